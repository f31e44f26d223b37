import { z } from 'zod';
import { choice, count, id, label, note, quantity, share } from './field.ts';

/** Which method a scenario stands for: it decides colour and marker everywhere, never the arithmetic. */
export const method = choice(
  { banks: 'Banks only', panel: 'Panel and buffer bank', hub: 'Generator hub', mix: 'A mix' },
  { label: 'Method' },
);
export type Method = z.infer<typeof method>;

const resting = {
  aimed: 'Aimed at the sun',
  tilted: 'Tilted, facing one way',
  flat: 'Flat',
  packed: 'Packed away',
} as const;
const tiltDeg = (meta: { readonly label: string; readonly hint: string }) =>
  quantity({ ...meta, unit: '°', min: 0, max: 90, step: 1 });

export const placement = z
  .strictObject({
    whileRiding: choice(
      { flat: 'Flat on the rack', tilted: 'Tilted on the rack', packed: 'Packed away' },
      { label: 'While riding' },
    ),
    atStops: choice(resting, { label: 'At stops' }),
    inCamp: choice(resting, { label: 'In camp' }),
    rackFactor: share({
      label: 'Rack factor',
      hint: 'Share of the light left by the shade of rider and bags while riding; about 0.6.',
    }),
    rackTiltDeg: tiltDeg({
      label: 'Tilt on the rack',
      hint: 'From flat. The road turns, so the mean over all headings counts.',
    }),
    restTiltDeg: tiltDeg({ label: 'Tilt at rest', hint: 'From flat; 90 stands upright.' }),
    facingDeg: quantity({
      label: 'Facing',
      unit: '° from north',
      min: 0,
      max: 360,
      step: 5,
      hint: 'Clockwise: 90 east, 180 south, 270 west.',
    }),
    /** Day stops at which the panel is laid out, by their names; none named means at every stop. */
    onlyAtStops: z.array(label({ label: 'Stop' })).max(20, { error: 'at most 20 names of stops' }),
    campFromH: count({ label: 'In camp from', unit: 'h', min: 0, max: 23 }),
    campToH: count({ label: 'In camp until', unit: 'h', min: 1, max: 24 }),
  })
  .refine(({ campFromH, campToH }) => campFromH < campToH, {
    path: ['campToH'],
    error: 'an hour after the first',
  });
export type Placement = z.infer<typeof placement>;

/** A panel flat on the rack while riding and turned to the sun at rest (common practice, no source). */
export const usualPlacement: Placement = {
  whileRiding: 'flat',
  atStops: 'aimed',
  inCamp: 'aimed',
  rackFactor: 0.6,
  rackTiltDeg: 30,
  restTiltDeg: 45,
  facingDeg: 180,
  onlyAtStops: [],
  campFromH: 0,
  campToH: 24,
};

const rules = z.strictObject({
  atWall: choice(
    { 'devices-first': 'Devices, then banks', 'banks-first': 'Banks, then devices' },
    { label: 'At a wall, charge', hint: 'A bank in between costs its losses.' },
  ),
  unsteadySource: choice(
    { 'bank-only': 'Into the buffer bank only', 'device-too': 'Into devices too' },
    { label: 'Panel and hub feed', hint: 'Many phones stop and start on an unsteady source.' },
  ),
  atPost: choice(
    { 'devices-too': 'Devices and banks', 'banks-only': 'Banks only; devices stay in the tent' },
    {
      label: 'At a campsite post, plug in',
      hint: 'With banks only, one bank fills at the post while another serves the tent.',
    },
  ),
  whenShort: choice(
    { 'nice-to-haves-wait': 'Nice-to-haves wait', 'serve-all': 'All are served' },
    {
      label: 'When stores run short',
      hint: 'Short: less is stored than the must-haves need until the next expected wall.',
    },
  ),
  cellsSleep: choice(
    { tent: 'In the tent', 'sleeping-bag': 'In the sleeping bag', outside: 'Outside' },
    { label: 'At night the cells lie', hint: 'Cold cells give less, and none is charged below 0 °C.' },
  ),
});
export type Rules = z.infer<typeof rules>;

/** Devices before banks, unsteady sources through a bank, must-haves before comfort (common practice, no source). */
export const usualRules: Rules = {
  atWall: 'devices-first',
  unsteadySource: 'bank-only',
  atPost: 'devices-too',
  whenShort: 'nice-to-haves-wait',
  cellsSleep: 'tent',
};

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
