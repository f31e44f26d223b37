import { z } from 'zod';
import { choice, count, label, note, quantity } from './field.ts';
import { money } from './money.ts';

export const itemState = choice(
  { owned: 'Owned', considering: 'Considering', retired: 'Retired' },
  { label: 'State', hint: 'Owned costs nothing more; considering is priced; retired stays on record only.' },
);
export type ItemState = z.infer<typeof itemState>;

export const mount = choice(
  {
    'front-wheel': 'In the front wheel',
    fork: 'Fork or front rack',
    handlebar: 'Handlebar',
    frame: 'Frame',
    'rear-rack': 'Rear rack',
    body: 'On the rider',
  },
  { label: 'Where it rides' },
);
export type Mount = z.infer<typeof mount>;

/** What every item has, whatever its kind. */
export const itemCommon = {
  label: label({ label: 'Label', hint: 'Type and figures, for example "20 Ah bank, 18 W in".' }),
  state: itemState,
  quantity: count({ label: 'Quantity', min: 1, max: 99 }),
  massG: quantity({ label: 'Mass of one', unit: 'g', min: 0, max: 20_000 }),
  price: money,
  lifeYears: z.nullable(
    quantity({
      label: 'Life',
      unit: 'years',
      min: 0.5,
      max: 50,
      step: 0.5,
      hint: 'From new to done with. Left empty, the usual life of its kind.',
    }),
  ),
  resale: z.nullable(money),
  mount,
  notes: note({ label: 'Notes' }),
};
