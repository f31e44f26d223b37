import { describe, expect, it } from 'vitest';
import { alike, carriedOver, changedPath } from '../../../src-renderer/state/carry-over.ts';

describe('alike()', () => {
  it.each([
    [{ a: 1 }, { a: 1, b: undefined }],
    [[1], [1, 2]],
    [{ a: null }, { a: {} }],
    [0, Number.NaN],
    [[], {}],
  ])('tells %j from %j', (one, other) => {
    expect([alike(one, other), alike(other, one)]).toEqual([false, false]);
  });

  it('sees the same in copies, and in what is no number', () => {
    const value = { a: [1, { b: null }], c: Number.NaN };
    expect(alike(value, structuredClone(value))).toBe(true);
  });
});

describe('carriedOver()', () => {
  const from = { massG: 200, input: { powerW: 18, port: 'C' }, legs: [{ days: 3 }, { days: 4 }] };
  const to = { ...from, massG: 190 };

  it('changes back only what the change touched', () => {
    const now = { ...from, input: { ...from.input, powerW: 30 } };
    expect(carriedOver(now, from, to)).toEqual({ ...now, massG: 190 });
  });

  it('leaves what was changed again since', () => {
    expect(carriedOver({ ...from, massG: 5 }, from, to).massG).toBe(5);
  });

  it('reaches into the entries of a list of the same length', () => {
    const back = { ...from, legs: [{ days: 3 }, { days: 9 }] };
    const now = { ...from, legs: [{ days: 1 }, { days: 4 }] };
    expect(carriedOver(now, from, back).legs).toEqual([{ days: 1 }, { days: 9 }]);
  });

  it('leaves a list that has become longer since', () => {
    const longer = { ...from, legs: [...from.legs, { days: 5 }] };
    const shorter = { ...from, legs: [{ days: 3 }] };
    expect(carriedOver(longer, from, shorter).legs).toBe(longer.legs);
  });

  it('never mixes two branches of a choice', () => {
    const mah = { capacity: { as: 'mah', mAh: 10_000 } };
    const wh: unknown = { capacity: { as: 'wh', wh: 37 } };
    expect(carriedOver<unknown>(wh, mah, { capacity: { as: 'mah', mAh: 20_000 } })).toEqual(wh);
  });

  it('answers the very value where all of it goes over', () => {
    expect(carriedOver(structuredClone(from), from, to)).toBe(to);
  });
});

describe('changedPath()', () => {
  it.each([
    [{ a: 1 }, { a: 1 }, null],
    [{ a: 1, b: 1 }, { a: 2, b: 2 }, []],
    [{ a: { b: 1, c: 1 } }, { a: { b: 1, c: 2 } }, ['a', 'c']],
    [{ legs: [{ days: 1 }, { days: 2 }] }, { legs: [{ days: 1 }, { days: 3 }] }, ['legs', '1', 'days']],
    [{ legs: [1] }, { legs: [1, 2] }, ['legs']],
    [{ resale: null }, { resale: { minor: 1 } }, ['resale']],
  ])('from %j to %j is %j', (from, to, path) => {
    expect(changedPath(from, to)).toEqual(path);
  });
});
