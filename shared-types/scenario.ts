import { z } from 'zod';
import { choice, count, id, label, note, share } from './field.ts';

/** Which method a scenario stands for: it decides colour and marker everywhere, never the arithmetic. */
export const method = choice(
  { banks: 'Banks only', panel: 'Panel and buffer bank', hub: 'Generator hub', mix: 'A mix' },
  { label: 'Method' },
);
export type Method = z.infer<typeof method>;

const placement = z.strictObject({
  whileRiding: choice({ flat: 'Flat on the rack', packed: 'Packed away' }, { label: 'While riding' }),
  atStops: choice({ aimed: 'Aimed at the sun', flat: 'Flat', packed: 'Packed away' }, { label: 'At stops' }),
  inCamp: choice({ aimed: 'Aimed at the sun', flat: 'Flat', packed: 'Packed away' }, { label: 'In camp' }),
  rackFactor: share({
    label: 'Rack factor',
    hint: 'Share of the light left by the shade of rider and bags while riding; about 0.6.',
  }),
});
export type Placement = z.infer<typeof placement>;

const rules = z.strictObject({
  atWall: choice(
    { 'devices-first': 'Devices, then banks', 'banks-first': 'Banks, then devices' },
    { label: 'At a wall, charge', hint: 'A bank in between costs its losses.' },
  ),
  unsteadySource: choice(
    { 'bank-only': 'Into the buffer bank only', 'device-too': 'Into devices too' },
    { label: 'Panel and hub feed', hint: 'Many phones stop and start on an unsteady source.' },
  ),
});
export type Rules = z.infer<typeof rules>;

export const scenarioDraft = z.strictObject({
  label: label({ label: 'Scenario' }),
  method,
  kit: z
    .array(z.strictObject({ itemId: id, quantity: count({ label: 'Carried', min: 1, max: 99 }) }))
    .max(200, { error: 'at most 200 different items' })
    .refine((kit) => new Set(kit.map((line) => line.itemId)).size === kit.length, {
      error: 'each item once, with its quantity',
    }),
  placement,
  rules,
  notes: note({ label: 'Notes' }),
});
export type ScenarioDraft = z.infer<typeof scenarioDraft>;
export type Scenario = ScenarioDraft & { readonly id: string };

/** How many scenarios one comparison takes. */
export const mostScenariosCompared = 6;
