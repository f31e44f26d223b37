import { z } from 'zod';
import { choice } from './field.ts';

/** The paper a printed sheet is laid out for. */
export const paper = choice({ a4: 'A4', letter: 'US Letter' }, { label: 'Paper' });
export type Paper = z.infer<typeof paper>;

/** The tables of a sheet, one tidy table a file. */
export const sheetTable = choice(
  {
    scenarios: 'Scenarios',
    legs: 'Energy by leg',
    days: 'Energy by day',
    kit: 'What is carried',
    lights: 'Lights of the banks',
    air: 'Batteries by air',
    swings: 'What would change the answer',
    assumptions: 'Assumptions',
  },
  { label: 'Table' },
);
export type SheetTable = z.infer<typeof sheetTable>;

/** What a sheet is saved as. */
export const sheetForm = z.discriminatedUnion(
  'as',
  [
    z.strictObject({ as: z.literal('pdf'), paper }),
    z.strictObject({ as: z.literal('csv'), table: sheetTable }),
    z.strictObject({ as: z.literal('json') }),
    z.strictObject({ as: z.literal('markdown') }),
    z.strictObject({ as: z.literal('text') }),
  ],
  { error: 'one of: pdf, csv, json, markdown, text' },
);
export type SheetForm = z.infer<typeof sheetForm>;

/**
 * Whether a sheet needs to know what would change the answer, which takes a while to find. A CSV holds it only as its own
 * table.
 */
export function tellsSwings(form: SheetForm, withSwings: boolean): boolean {
  return form.as === 'csv' ? form.table === 'swings' : withSwings;
}
