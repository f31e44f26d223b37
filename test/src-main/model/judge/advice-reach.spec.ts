import { describe, expect, it } from 'vitest';
import { daysText, reachOf } from '../../../../src-main/model/judge/advice-reach.ts';
import type { Standing } from '../../../../src-main/model/judge/advised.ts';

const situation = {
  ...{ histories: 200, confidence: 0.9, remedies: null, ownsNoKit: false },
  tour: { days: 24 },
};
const standing = (label: string, daysWithoutWall: number): Standing =>
  ({ scenario: { label, daysWithoutWall } }) as unknown as Standing;
const said = (...days: readonly number[]) =>
  reachOf(
    days.map((each, at) => standing(`Kit ${at + 1}`, each)),
    situation,
  );

describe('reachOf()', () => {
  it('says how long the first two last, where they differ', () => {
    expect(said(24, 3, 9)).toEqual([
      'Kit 1 needs no night with a wall on the way; Kit 2 needs a night with a wall at least every 3 days.',
    ]);
    expect(said(1, 0)).toEqual([
      'Kit 1 needs a night with a wall at least every day; Kit 2 would not do with a wall every night.',
    ]);
  });

  it.each([[[]], [[3]], [[3, 3]], [[3, Number.NaN]]])('has nothing to say of %j', (days) => {
    expect(said(...days)).toEqual([]);
  });
});

describe('daysText()', () => {
  it('leaves one out', () => {
    expect([daysText(1), daysText(14)]).toEqual(['day', '14 days']);
  });
});
