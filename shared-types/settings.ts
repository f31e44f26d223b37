import { z } from 'zod';
import { choice, id, share } from './field.ts';
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

export const settings = z.strictObject({
  currency: currencyCode,
  theme: choice({ system: 'As the system', light: 'Light', dark: 'Dark' }, { label: 'Theme' }),
  tourId: z.nullable(id),
  stepMinutes: choice({ '5': '5 min', '15': '15 min', '30': '30 min', '60': '60 min' }, { label: 'Step' }),
  preferences,
});
export type Settings = z.infer<typeof settings>;
