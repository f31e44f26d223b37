import { describe, expect, it } from 'vitest';
import { placeAfterKey } from '../../../../src-renderer/views/trade-offs/grid-moves.ts';

const size = { rows: 3, columns: 4 };
const middle = { row: 1, column: 1 };

describe('the keys of a grid', () => {
  it.each([
    ['ArrowUp', { row: 0, column: 1 }],
    ['ArrowDown', { row: 2, column: 1 }],
    ['ArrowLeft', { row: 1, column: 0 }],
    ['ArrowRight', { row: 1, column: 2 }],
    ['Home', { row: 1, column: 0 }],
    ['End', { row: 1, column: 3 }],
  ])('%s leads on', (key, place) => expect(placeAfterKey(key, middle, size)).toEqual(place));

  it.each([
    ['ArrowUp', { row: 0, column: 0 }],
    ['ArrowLeft', { row: 0, column: 0 }],
    ['ArrowDown', { row: 2, column: 3 }],
    ['ArrowRight', { row: 2, column: 3 }],
  ])('%s stays at the edge', (key, place) => expect(placeAfterKey(key, place, size)).toEqual(place));

  it.each(['Tab', 'a', 'Enter', ' '])('%j leads nowhere', (key) =>
    expect(placeAfterKey(key, middle, size)).toBeNull(),
  );
});
