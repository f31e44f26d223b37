import { describe, expect, it } from 'vitest';
import {
  carriedFirst,
  drawnPanels,
  fitTogether,
} from '../../../../../src-renderer/views/tours/leg-sun/panel-choice.ts';
import { panelSun } from '../../../support/fake-leg-sun.ts';

const panels = ['a', 'b', 'c', 'd', 'e'].map((id) => panelSun(id, `Panel ${id}`, [10]));
const ids = (some: typeof panels | ReturnType<typeof drawnPanels>): string =>
  some.map(({ itemId }) => itemId).join('');

describe('carriedFirst()', () => {
  it('keeps the order where nothing is carried', () => {
    expect(ids(carriedFirst(panels, []))).toBe('abcde');
    expect(ids(carriedFirst(panels, ['bank']))).toBe('abcde');
  });

  it('puts the panels carried before the others', () => {
    expect(ids(carriedFirst(panels, ['d', 'b']))).toBe('bdace');
  });
});

describe('fitTogether()', () => {
  it('draws no more than four panels side by side', () => {
    expect([fitTogether(5, 1), fitTogether(4, 1)]).toEqual([false, true]);
  });

  it('draws no bars too thin to be told apart', () => {
    expect([fitTogether(4, 31), fitTogether(4, 12)]).toEqual([false, true]);
  });

  it('always draws one panel, however long the leg', () => {
    expect([fitTogether(1, 366), fitTogether(0, 366)]).toEqual([true, true]);
  });
});

describe('drawnPanels()', () => {
  it('draws none where there is none', () => {
    expect(drawnPanels([], 366, null)).toEqual([]);
  });

  it('draws all that fit, whatever was chosen before', () => {
    expect(ids(drawnPanels(panels.slice(0, 2), 12, 'b'))).toBe('ab');
  });

  it('draws the first of too many until one is chosen', () => {
    expect(ids(drawnPanels(panels, 12, null))).toBe('a');
    expect(ids(drawnPanels(panels, 12, 'd'))).toBe('d');
  });

  it('draws the first when the chosen one went', () => {
    expect(ids(drawnPanels(panels, 12, 'gone'))).toBe('a');
  });
});
