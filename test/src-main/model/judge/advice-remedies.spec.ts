import { describe, expect, it } from 'vitest';
import type { Remedies } from '../../../../shared-types/comparison.ts';
import { whatWouldCarry } from '../../../../src-main/model/judge/advice-remedies.ts';
import type { AdvisedScenario } from '../../../../src-main/model/judge/advised.ts';

const nearest: AdvisedScenario = {
  ...{ id: 'banks', label: 'Banks only', toBuy: { minor: 0, currency: 'EUR' }, notConverted: [] },
  ...{ carriedG: 700, frontWheelG: 30, spilledShare: 0, daysWithoutWall: 3, kindsToBuy: [] },
  margin: {
    ...{ value: -0.32, capped: false, limitedBy: { device: 'Navigation unit', day: 12 } },
    ...{ usual: -0.06, usualCapped: false },
  },
  risk: { share: 0.7, low: 0.63, high: 0.76 },
  firstShort: null,
};
const said = (remedies: Partial<Remedies> | null, changes: Partial<AdvisedScenario> = {}): string =>
  whatWouldCarry(
    { ...nearest, ...changes },
    {
      ...{ histories: 200, confidence: 0.9, ownsNoKit: false, tour: { days: 24 } },
      remedies: remedies && { scenarioId: 'banks', moreNight: null, items: [], ...remedies },
    },
  );
const flat = ' The navigation unit is the first to run flat, on day 12.';

describe('whatWouldCarry()', () => {
  it('names all that would, each with the margin it gives', () => {
    const remedies = {
      moreNight: { afterDay: 12, margin: 0.04, capped: false },
      items: [
        { label: 'Small panel', margin: -0.1, capped: false },
        { label: '20 W folding panel', margin: 0.68, capped: false },
      ],
    };
    expect(said(remedies)).toBe(
      `It would carry it with one more night with a wall, after day 12 (+4\u202f%), or with the 20 W folding panel (+68\u202f%).${flat}`,
    );
  });

  it('says when nothing tried is enough, what comes nearest, and how often a wall is needed', () => {
    const remedies = {
      moreNight: { afterDay: 12, margin: -0.2, capped: false },
      items: [
        { label: 'Small panel', margin: -0.1, capped: false },
        { label: 'Bank', margin: -0.3, capped: false },
      ],
    };
    expect(said(remedies)).toBe(
      `Not enough alone: one more night with a wall, after day 12 (\u221220\u202f%), or at best of the items the small panel (\u221210\u202f%). It would carry it with a wall at least every 3 days.${flat}`,
    );
  });

  it('never promises what a wall every night would not give', () => {
    expect(said({}, { daysWithoutWall: 0 })).toContain('Not even a wall every night');
    expect(said({}, { daysWithoutWall: 1 })).toContain('with a wall at least every day.');
  });

  it('does not take what was tried on one scenario for another', () => {
    const other = { scenarioId: 'panel', moreNight: { afterDay: 2, margin: 0.3, capped: false } };
    for (const remedies of [null, other]) {
      expect(said(remedies)).toContain('would help');
      expect(said(remedies)).not.toContain('+30');
    }
  });
});
