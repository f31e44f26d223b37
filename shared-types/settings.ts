import { z } from 'zod';
import { letterKeys, numberFormat, units } from './display-settings.ts';
import { paper } from './sheet.ts';
import { choice, count, flag, id, quantity, share } from './field.ts';
import { frontLoad } from './front-load.ts';
import { limits } from './limits.ts';
import { moneySettings } from './money-settings.ts';
import { currencyCode } from './money.ts';

/** The criteria of the scorecard. `lower` or `higher` is better; an `extra` counts only where the rider says so. */
export const criteria = {
  cost: { label: 'To buy', better: 'lower', extra: false },
  grams: { label: 'Grams carried', better: 'lower', extra: false },
  frontWheelGrams: { label: 'On the front wheel', better: 'lower', extra: false },
  margin: { label: 'Energy margin', better: 'higher', extra: false },
  risk: { label: 'Risk of a flat must-have', better: 'lower', extra: true },
  minutesLost: { label: 'Minutes lost a day', better: 'lower', extra: true },
  daysWithoutWall: { label: 'Days without a wall', better: 'higher', extra: true },
} as const;
export type Criterion = keyof typeof criteria;
export const criterionNames = Object.keys(criteria) as Criterion[];

const bounds = { error: 'a number' };
const largestBound = 1e6;

/**
 * The rider's own scale of one criterion: at `satisfied` nothing better is wanted (1), at `unacceptable` nothing is left (0).
 * Cost is in major units of the settings' currency, grams in g, margin and risk as shares (0.3 is 30 %), minutes and days as
 * they are.
 */
const scaleParts = {
  weight: share({ label: 'Weight' }),
  satisfied: z.number(bounds).min(-largestBound, bounds).max(largestBound, bounds),
  unacceptable: z.number(bounds).min(-largestBound, bounds).max(largestBound, bounds),
};
const hasExtent = ({ satisfied, unacceptable }: CriterionScale): boolean => satisfied !== unacceptable;
const noExtent = { path: ['unacceptable'], error: 'a value other than "fully satisfied"' };
const scale = z.strictObject(scaleParts).refine(hasExtent, noExtent);
const extraScale = z
  .strictObject({ ...scaleParts, counted: flag({ label: 'Counts' }) })
  .refine(hasExtent, noExtent);
export interface CriterionScale {
  readonly weight: number;
  readonly satisfied: number;
  readonly unacceptable: number;
}
export type ExtraScale = z.infer<typeof extraScale>;

export const preferences = z
  .strictObject({
    cost: scale,
    grams: scale,
    frontWheelGrams: scale,
    margin: scale,
    risk: extraScale,
    minutesLost: extraScale,
    daysWithoutWall: extraScale,
    limits,
  })
  .superRefine((value, context) => {
    for (const name of criterionNames) {
      const { satisfied, unacceptable } = value[name];
      const turned = criteria[name].better === 'lower' ? satisfied > unacceptable : satisfied < unacceptable;
      if (turned) {
        context.addIssue({
          code: 'custom',
          path: [name, 'unacceptable'],
          message: `a value ${criteria[name].better === 'lower' ? 'above' : 'below'} "fully satisfied"`,
        });
      }
    }
    if (countedCriteria(value).every((name) => value[name].weight === 0)) {
      context.addIssue({
        code: 'custom',
        path: ['margin', 'weight'],
        message: 'at least one weight above 0',
      });
    }
  });
export type Preferences = z.infer<typeof preferences>;

/** The criteria that take part in score, marks and dominance: the four of the core, and the extras that the rider counts. */
export function countedCriteria(preferences: Preferences): readonly Criterion[] {
  return criterionNames.filter((name) => {
    const own: CriterionScale | ExtraScale = preferences[name];
    return !('counted' in own) || own.counted;
  });
}

/** The extras of a new catalogue: not counted, on scales to start from (common practice, no source). */
export const usualExtras: Readonly<Pick<Preferences, 'risk' | 'minutesLost' | 'daysWithoutWall'>> = {
  risk: { counted: false, weight: 0.2, satisfied: 0, unacceptable: 0.1 },
  minutesLost: { counted: false, weight: 0.2, satisfied: 0, unacceptable: 20 },
  daysWithoutWall: { counted: false, weight: 0.2, satisfied: 7, unacceptable: 2 },
};

/** How the weather of a tour is drawn, and how its light falls on a tilted panel. */
export const sky = z.strictObject({
  method: choice(
    { distribution: 'Distribution, with persistence', transitions: 'Table of daily changes' },
    {
      label: 'Weather from day to day',
      hint: 'Bendt et al. 1981 or Aguiar et al. 1988; where they differ, the answer is less sure.',
    },
  ),
  /** Correlation of one day's sky with the next. Graham, Hollands & Unny 1988 took 0.29; no value is universal. */
  persistence: quantity({
    label: 'Persistence',
    min: 0,
    max: 0.9,
    step: 0.01,
    hint: 'For the first method: 0.29 as a rule, 0.14 to 0.41 seen by climate. More makes longer runs of dull days.',
  }),
  histories: count({
    label: 'Drawn histories',
    min: 20,
    max: 1000,
    hint: 'Courses of weather; 200 are enough for a band.',
  }),
  seed: count({
    label: 'Seed',
    min: 0,
    max: 2_147_483_647,
    hint: 'The same seed draws the same weather again.',
  }),
  diffuse: choice(
    { 'hay-davies': 'Brighter round the sun', isotropic: 'Alike from all sides' },
    { label: 'Light of the sky', hint: 'Hay & Davies 1980, or isotropic as the simple alternative.' },
  ),
  groundReflectance: share({
    label: 'Ground reflection',
    hint: 'About 0.2; 0.7 over fresh snow.',
  }),
});
export type SkySettings = z.infer<typeof sky>;

/** Persistence of the sky where the rider gives none, and its range by climate for the sensitivity of an answer. */
export const persistenceRange = { usual: 0.29, low: 0.14, high: 0.41 } as const;

/** What a new catalogue starts with; 200 histories show P10 and P90 to about two points. */
export const usualSky: SkySettings = {
  method: 'distribution',
  persistence: persistenceRange.usual,
  histories: 200,
  seed: 1,
  diffuse: 'hay-davies',
  groundReflectance: 0.2,
};

/** How sure the energy margin is to be, and how a day's use strays from the plan. */
export const risk = z.strictObject({
  /** Share of the histories in which no must-have may run flat. */
  confidence: share(
    {
      label: 'Confidence of the margin',
      hint: 'Of all drawn histories, this share must be carried; 0.9 as a rule.',
    },
    0.5,
    0.99,
  ),
  useSpread: share({
    label: 'Spread of daily use',
    hint: 'Standard deviation over mean, for each device and day; about 0.25.',
  }),
});
export type RiskSettings = z.infer<typeof risk>;

/** What a new catalogue starts with (common practice, no source). */
export const usualRisk: RiskSettings = { confidence: 0.9, useSpread: 0.25 };

export const settings = z.strictObject({
  currency: currencyCode,
  theme: choice({ system: 'As the system', light: 'Light', dark: 'Dark' }, { label: 'Theme' }),
  units,
  numberFormat,
  letterKeys,
  paper,
  tourId: z.nullable(id),
  stepMinutes: choice({ '5': '5 min', '15': '15 min', '30': '30 min', '60': '60 min' }, { label: 'Step' }),
  sky,
  risk,
  money: moneySettings,
  frontLoad,
  preferences,
});
export type Settings = z.infer<typeof settings>;
