import { z } from 'zod';
import { choice, count, id, quantity, share } from './field.ts';
import { currencyCode } from './money.ts';

/** The criteria of the scorecard. `lower` or `higher` is better. */
export const criteria = {
  cost: { label: 'To buy', better: 'lower' },
  grams: { label: 'Grams carried', better: 'lower' },
  frontWheelGrams: { label: 'On the front wheel', better: 'lower' },
  margin: { label: 'Energy margin', better: 'higher' },
} as const;
export type Criterion = keyof typeof criteria;
export const criterionNames = Object.keys(criteria) as Criterion[];

/**
 * The rider's own scale of one criterion: at `satisfied` nothing better is wanted (1), at `unacceptable` nothing is left (0).
 * Cost is in major units of the settings' currency, grams in g, margin as a share (0.3 is +30 %).
 */
const bounds = { error: 'a number' };
const scale = z
  .strictObject({
    weight: share({ label: 'Weight' }),
    satisfied: z.number(bounds).min(-1e6, bounds).max(1e6, bounds),
    unacceptable: z.number(bounds).min(-1e6, bounds).max(1e6, bounds),
  })
  .refine(({ satisfied, unacceptable }) => satisfied !== unacceptable, {
    path: ['unacceptable'],
    error: 'a value other than "fully satisfied"',
  });
export type CriterionScale = z.infer<typeof scale>;

export const preferences = z
  .strictObject({ cost: scale, grams: scale, frontWheelGrams: scale, margin: scale })
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
    if (criterionNames.every((name) => value[name].weight === 0)) {
      context.addIssue({
        code: 'custom',
        path: ['margin', 'weight'],
        message: 'at least one weight above 0',
      });
    }
  });
export type Preferences = z.infer<typeof preferences>;

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
  tourId: z.nullable(id),
  stepMinutes: choice({ '5': '5 min', '15': '15 min', '30': '30 min', '60': '60 min' }, { label: 'Step' }),
  sky,
  risk,
  preferences,
});
export type Settings = z.infer<typeof settings>;
