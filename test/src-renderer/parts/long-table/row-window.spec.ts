import { describe, expect, it } from 'vitest';
import {
  piecesInView,
  rowByKey,
  scrollToShow,
  wholeUpTo,
  type TableView,
} from '../../../../src-renderer/parts/long-table/row-window.ts';

const rowHeightPx = 50;
const atTop: TableView = { scrollTopPx: 0, heightPx: 500, rowHeightPx };
const many = Array.from({ length: 10_000 }, (_, index) => `row ${index}`);

const heightPx = (view: TableView, kept: number) =>
  piecesInView(many, view, kept).reduce(
    (sum, piece) => sum + (piece.as === 'gap' ? piece.rows : 1) * rowHeightPx,
    0,
  );
const drawn = (view: TableView, kept: number) =>
  piecesInView(many, view, kept).flatMap((piece) => (piece.as === 'row' ? [piece.index] : []));

describe('piecesInView()', () => {
  it('draws nothing of no rows', () => {
    expect(piecesInView([], atTop, -1)).toEqual([]);
  });

  it('draws a short table whole', () => {
    const short = many.slice(0, wholeUpTo);
    expect(piecesInView(short, atTop, 0)).toHaveLength(wholeUpTo);
  });

  it('draws what is in view and a little more, wherever it is scrolled to', () => {
    for (const scrollTopPx of [0, 2475, 250_000, 499_500]) {
      const rows = drawn({ ...atTop, scrollTopPx }, 5000);
      const first = Math.floor(scrollTopPx / rowHeightPx);
      expect(rows).toEqual(expect.arrayContaining([first, first + 9]));
      expect(rows.length).toBeLessThan(50);
    }
  });

  it('stays as high as all rows together', () => {
    for (const kept of [0, 5000, 9999])
      for (const scrollTopPx of [0, 250_000, 499_500])
        expect(heightPx({ ...atTop, scrollTopPx }, kept)).toBe(500_000);
  });

  it('keeps the row with the focus when it leaves the view, above or below', () => {
    const middle = { ...atTop, scrollTopPx: 250_000 };
    expect(drawn(middle, 3)[0]).toBe(3);
    expect(drawn(middle, 9000).at(-1)).toBe(9000);
    expect(drawn(middle, 5000).filter((index) => index === 5000)).toEqual([5000]);
  });

  it('draws the end when the list has become shorter than it was scrolled', () => {
    const pieces = piecesInView(many.slice(0, 200), { ...atTop, scrollTopPx: 400_000 }, 0);
    expect(pieces.at(-1)).toMatchObject({ as: 'row', row: 'row 199' });
  });
});

describe('rowByKey()', () => {
  it.each([
    ['ArrowDown', 5, 6],
    ['ArrowUp', 5, 4],
    ['PageDown', 5, 15],
    ['PageUp', 25, 15],
    ['Home', 5, 0],
    ['End', 5, 99],
    ['ArrowUp', 0, 0],
    ['PageDown', 95, 99],
  ])('leads by %s from row %i to row %i', (key, from, to) => {
    expect(rowByKey(key, from, 100, 10)).toBe(to);
  });

  it('leads nowhere by other keys', () => {
    expect(rowByKey('Enter', 5, 100, 10)).toBeNull();
    expect(rowByKey('constructor', 5, 100, 10)).toBeNull();
  });
});

describe('scrollToShow()', () => {
  it('moves no further than it must', () => {
    expect(scrollToShow(3, atTop)).toBe(0);
    expect(scrollToShow(10, atTop)).toBe(50);
    expect(scrollToShow(2, { ...atTop, scrollTopPx: 1000 })).toBe(100);
  });
});
