import type { PairedMargin, Upgrade, UpgradeOnTour } from '../../shared-types/upgrade.ts';

/** A margin that goes from -12 % to +8 % beyond doubt; `changes` replace whole fields. */
export function pairedMarginOf(changes: Partial<PairedMargin> = {}): PairedMargin {
  return {
    ...{ before: -0.12, after: 0.08, cappedBefore: false, cappedAfter: false },
    ...{ difference: 0.2, low: 0.15, high: 0.26 },
    ...changes,
  };
}

const riskOf = (share: number) => ({ share, low: share / 2, high: share * 2 });

/** A ten-day tour on which a change helps. */
export function upgradeOnTour(label: string, changes: Partial<UpgradeOnTour> = {}): UpgradeOnTour {
  return {
    ...{ tourId: label.toLowerCase(), label, days: 10, effect: 'helps', changesNothing: false },
    sentence: `${label}: it carries the plan, which fails without it.`,
    score: { before: 0.5, after: 0.7 },
    margin: pairedMarginOf(),
    marginText: '20 points more (15 to 26)',
    risk: { before: riskOf(0.2), after: riskOf(0.05) },
    ...{ mended: 32, spoiled: 2 },
    minutesLost: { before: 2, after: 3.5 },
    extraWhPerDay: 5,
    moneyPerWh: { minor: 1680, currency: 'EUR' },
    marginPointsPer100g: 3.6,
    wallNights: { before: 4, after: 1 },
    payBack: { days: 28, text: '3 nights with a wall saved in 10 days, at 10\u00a0EUR each.' },
    ...changes,
  };
}

const eur = (minor: number) => ({ minor, currency: 'EUR' });

/** A change that helps on one tour of two; `changes` replace whole fields. */
export function upgradeFixture(changes: Partial<Upgrade> = {}): Upgrade {
  return {
    ...{ base: 'the kit as owned', change: '20 W folding panel', histories: 200, confidence: 0.9 },
    verdict: { is: 'for-some', heading: 'Only for Alps', why: 'It costs 84 EUR and adds 560 g.' },
    money: {
      ...{ toBuy: eur(8400), resale: eur(0), net: eur(8400) },
      ...{ resaleUnknown: [], apart: { toBuy: [], resale: [] } },
    },
    grams: { before: 940, after: 1500 },
    frontWheelGrams: { before: 40, after: 40 },
    tours: [
      upgradeOnTour('Alps'),
      upgradeOnTour('Coast', { effect: 'no-odds', changesNothing: true, moneyPerWh: null }),
    ],
    ...{ notes: [], cautions: [] },
    ...changes,
  };
}
