import { z } from 'zod';
import { flag, quantity, share } from './field.ts';

/** No margin above this is looked for: all use can grow fourfold. */
const largestMargin = 3;

/**
 * What no scenario may pass, whatever it scores; null where the rider sets no limit. Money is in major units of the settings'
 * currency.
 */
export const limits = z.strictObject({
  toBuy: z.nullable(
    quantity({ label: 'To buy, at most', min: 0, max: 1_000_000, hint: 'Empty for no limit.' }),
  ),
  grams: z.nullable(
    quantity({
      label: 'Grams carried, at most',
      unit: 'g',
      min: 0,
      max: 1_000_000,
      hint: 'Empty for no limit.',
    }),
  ),
  frontWheelGrams: z.nullable(
    quantity({
      label: 'On the front wheel, at most',
      unit: 'g',
      min: 0,
      max: 1_000_000,
      hint: 'Empty for no limit.',
    }),
  ),
  margin: z.nullable(
    share(
      {
        label: 'Energy margin, at least',
        hint: 'Below zero, use must be cut. Empty for no limit.',
      },
      -1,
      largestMargin,
    ),
  ),
  byAir: flag({
    label: 'I travel there by air',
    hint: 'Leaves out what must stay home by the air-transport rules listed here; ask the airline.',
  }),
});
export type Limits = z.infer<typeof limits>;
export type LimitName = keyof Limits;

/** What a catalogue starts with. */
export const noLimits: Limits = {
  toBuy: null,
  grams: null,
  frontWheelGrams: null,
  margin: null,
  byAir: false,
};
