import { z } from 'zod';
import { flag } from './field.ts';
import { itemDraft } from './item.ts';
import { tourDraft } from './tour.ts';

const mostItems = 60;

/** What a rider begins with in place of the demo: devices and kit, and a tour to compare on. */
export const ownStart = z.strictObject({
  items: z
    .array(itemDraft)
    .max(mostItems, { error: `at most ${mostItems} items; more can be added to the inventory later` })
    .refine((items) => items.some(({ kind }) => kind === 'device'), { error: 'at least one device' }),
  tour: tourDraft,
  putDemoAway: flag({
    label: 'Put the demo away',
    hint: 'Its tour and scenarios are removed, its items retired. About brings it back.',
  }),
});
export type OwnStart = z.infer<typeof ownStart>;
