import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../../../db/demo/demo.ts';
import { judgeUpgrade, type KitOnTour, type UpgradeTerms } from '../../../../src-main/model/judge/upgrade.ts';
import { eur, jpy } from '../../../support/priced-line.ts';
import { criterionValues } from '../../../support/score-fixture.ts';

const tour = { id: 'coast', label: 'Coast', days: 10, demandWhPerDay: 20 };
const terms: UpgradeTerms = {
  money: { net: eur(6000), apart: { toBuy: [], resale: [] } },
  settings: { ...demoSettings, money: { ...demoSettings.money, wallNight: eur(2000) } },
};
const histories = 40;
/** Histories from `least` by a hundredth each, in no order of luck. */
const factors = (least: number): Float64Array =>
  Float64Array.from({ length: histories }, (_, history) => least + ((history * 17) % histories) / 100);
const kit = (least: number, changes: Partial<KitOnTour> = {}): KitOnTour => ({
  values: criterionValues({ grams: 500 }),
  factors: factors(least),
  nightsNeeded: 2,
  airborne: true,
  ...changes,
});
const better = kit(1.1, {
  nightsNeeded: 0,
  values: criterionValues({ cost: 60, grams: 900, minutesLost: 3 }),
});

describe('a change judged on one tour', () => {
  it('finds the margins at the confidence, and counts the histories mended', () => {
    const result = judgeUpgrade({ tour, kits: { before: kit(0.8), after: better } }, terms);
    // Four of 40 may fail, so that the fifth of 0.80, 0.81, ... stands for all.
    expect(result.margin.before).toBeCloseTo(-0.16, 9);
    expect(result.margin.difference).toBeCloseTo(0.3, 9);
    expect(result.risk.before.share).toBeCloseTo(0.5, 9);
    expect(result).toMatchObject({ mended: 20, spoiled: 0, effect: 'helps', changesNothing: false });
  });

  it('puts money and grams over what is gained', () => {
    const result = judgeUpgrade({ tour, kits: { before: kit(0.8), after: better } }, terms);
    // 30 points of 20 Wh a day are 6 Wh for 60 EUR; 30 points for 400 g.
    expect(result.extraWhPerDay).toBeCloseTo(6, 9);
    expect(result.moneyPerWh).toEqual(eur(1000));
    expect(result.marginPointsPer100g).toBeCloseTo(7.5, 9);
    // Two nights of 20 EUR in ten days are 4 EUR a day.
    expect(result.payBack.days).toBe(15);
  });

  it('has no price of a watt-hour that is not gained, nor points of grams that are not added', () => {
    const result = judgeUpgrade({ tour, kits: { before: kit(0.8), after: kit(0.8) } }, terms);
    expect(result.moneyPerWh).toBeNull();
    expect(result.marginPointsPer100g).toBeNull();
  });

  it('prices no watt-hour and no day of a change that is paid in part in another currency', () => {
    const money = { net: eur(6000), apart: { toBuy: [jpy(900)], resale: [] } };
    const result = judgeUpgrade({ tour, kits: { before: kit(0.8), after: better } }, { ...terms, money });
    expect([result.moneyPerWh, result.payBack.days]).toEqual([null, null]);
  });

  it('gives no verdict on a margin that is not known', () => {
    const broken = kit(0.8, { factors: factors(0.8).fill(Number.NaN, 3, 4) });
    const result = judgeUpgrade({ tour, kits: { before: kit(0.8), after: broken } }, terms);
    expect(result.effect).toBe('not-known');
    expect(result.sentence).toMatch(/not known \(Energy margin\)/);
    expect(result.moneyPerWh).toBeNull();
  });

  it('does not score a difference that may be luck', () => {
    const luck = factors(0.9).map((factor, history) => factor + (history % 2 === 0 ? 0.1 : -0.1));
    const result = judgeUpgrade(
      { tour, kits: { before: kit(0.9), after: kit(0.9, { factors: luck }) } },
      terms,
    );
    expect(result.marginText).toMatch(/no clear difference/);
    expect(result.score.after).toBe(result.score.before);
    expect(result.effect).toBe('no-odds');
  });

  const anyKit = fc
    .record({
      luck: fc.array(fc.double({ min: 0, max: 4, noNaN: true }), { minLength: 12, maxLength: 12 }),
      values: fc.record({ cost: fc.nat(400), grams: fc.nat(1500), minutesLost: fc.nat(20) }),
      nightsNeeded: fc.option(fc.nat(9)),
    })
    .map(({ luck, values, nightsNeeded }) =>
      kit(1, { factors: Float64Array.from(luck), values: criterionValues(values), nightsNeeded }),
    );
  const runs = { seed: 12, numRuns: 40, endOnFailure: true };

  it('finds that a kit in the place of itself changes nothing', () => {
    fc.assert(
      fc.property(anyKit, (same) => {
        const result = judgeUpgrade(
          { tour, kits: { before: same, after: same } },
          { ...terms, money: { ...terms.money, net: eur(0) } },
        );
        expect(result).toMatchObject({ changesNothing: true, mended: 0, spoiled: 0, extraWhPerDay: 0 });
        expect(result.effect).toBe('no-odds');
      }),
      runs,
    );
  });

  it('turns every sign when the change is taken back', () => {
    fc.assert(
      fc.property(anyKit, anyKit, (a, b) => {
        const there = judgeUpgrade({ tour, kits: { before: a, after: b } }, terms);
        const back = judgeUpgrade({ tour, kits: { before: b, after: a } }, terms);
        expect(back.margin.difference).toBeCloseTo(-there.margin.difference, 9);
        expect(back.extraWhPerDay).toBeCloseTo(-there.extraWhPerDay, 9);
        expect([back.mended, back.spoiled]).toEqual([there.spoiled, there.mended]);
        expect(back.risk).toEqual({ before: there.risk.after, after: there.risk.before });
      }),
      runs,
    );
  });
});
