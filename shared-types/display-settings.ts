import type { z } from 'zod';
import { choice, flag } from './field.ts';

export const units = choice(
  { metric: 'Metric: g, km, m, °C', imperial: 'Imperial: oz, mi, ft, °F' },
  {
    label: 'Units',
    hint: 'Of fields and figures on screen. Sentences of advice and assumptions, CSV and the saved sheet stay metric.',
  },
);
export type Units = z.infer<typeof units>;

/** Each shown as it writes one and the same number; the tags are of BCP 47. */
export const numberFormat = choice(
  {
    system: 'As the system',
    'en-GB': '1,234.5',
    'de-DE': '1.234,5',
    'fr-FR': '1 234,5',
    'es-ES': '1234,5',
    'de-CH': '1’234.5',
    'en-IN': '12,34,567.8',
  },
  { label: 'Number format', hint: 'Both a decimal comma and a decimal point are understood in fields.' },
);
export type NumberFormat = z.infer<typeof numberFormat>;

/** Single letters as shortcuts; who speaks to the computer or shakes on the keys turns them off (WCAG 2.1.4). */
export const letterKeys = flag({ label: 'Single letters and signs are shortcuts' });
