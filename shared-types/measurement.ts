import { z } from 'zod';
import { isoDate } from './field.ts';

/** What the rider measured, and when. The model prefers it to the label, and results say so. */
export const measurement = (value: z.ZodNumber) =>
  z.nullable(z.strictObject({ value, on: isoDate({ label: 'Measured on' }) }));
