import { z } from 'zod';

/**
 * What a form needs to draw a field, kept on the schema itself so that limits, units and labels are declared once.
 * Every `error` text in these schemas says what is allowed; the wrapper that parses adds where and what was given.
 */
export interface FieldMeta {
  readonly label: string;
  readonly unit?: string;
  readonly min?: number;
  readonly max?: number;
  readonly step?: number;
  /** A share of a whole, shown in per cent. */
  readonly isShare?: true;
  /** A height above the sea, which some read in feet; other lengths in m are not. */
  readonly isHeight?: true;
  /** Shown under the field: what the figure means, where a rider finds it, what is usual. */
  readonly hint?: string;
  /** The words shown for each value of a choice. */
  readonly choices?: Readonly<Record<string, string>>;
  /** Long text, drawn as a text area. */
  readonly multiline?: boolean;
}

/**
 * What is allowed where a whole part of an input is missing or of another sort; a field's own text goes before it. Figures and texts
 * have one each, so that what is too long or too short without one is a list.
 */
const sorts: Readonly<Record<string, string>> = {
  array: 'a list',
  boolean: 'yes or no',
  number: 'a number',
  object: 'a group of fields',
  string: 'text',
};

z.config({
  customError: (issue) => {
    if (issue.code === 'invalid_type') return sorts[issue.expected] ?? null;
    if (issue.code === 'too_big') return `a list of at most ${plain(Number(issue.maximum))}`;
    if (issue.code === 'too_small') return `a list of at least ${plain(Number(issue.minimum))}`;
    return issue.code === 'invalid_value' ? `one of: ${issue.values.map(String).join(', ')}` : null;
  },
});

const metas = z.registry<FieldMeta>();

/** The meta of a schema, looking through `nullable` and `optional`; undefined when it is not one of our fields. */
export function fieldMeta(schema: z.core.$ZodType): FieldMeta | undefined {
  const own = metas.get(schema);
  if (own !== undefined) return own;
  if (schema instanceof z.ZodNullable || schema instanceof z.ZodOptional) return fieldMeta(schema.unwrap());
  return undefined;
}

/** With a true minus, as every figure on screen. */
const plain = (value: number, locale = 'en'): string =>
  value.toLocaleString(locale, { maximumFractionDigits: 4 }).replace('-', '\u2212');

/** The unit after a figure; before a per cent sign stands a narrow no-break space, as in every percentage on screen. */
function unitText({ unit }: FieldMeta): string {
  if (unit === undefined) return '';
  return unit === '%' ? '\u202f%' : ` ${unit}`;
}

/** The sentence part that names a range, for example `a number from 0 to 20,000 g`. */
export function rangeText(meta: FieldMeta, whole = false, locale?: string): string {
  const range = `from ${plain(meta.min ?? 0, locale)} to ${plain(meta.max ?? 0, locale)}${unitText(meta)}`;
  return `a ${whole ? 'whole ' : ''}number ${range}`;
}

/** The same range as a screen shows it: in the meta's unit and the rider's locale. Any other text is left as it is. */
export function rangeAsShown(allowed: string, meta: FieldMeta, locale?: string): string {
  const isRange = /^a (?:whole )?number from /.test(allowed);
  if (!isRange || meta.min === undefined || meta.max === undefined) return allowed;
  return rangeText(meta, allowed.startsWith('a whole'), locale);
}

type Range = FieldMeta & { readonly min: number; readonly max: number };

/** A finite number inside a closed range, with its unit. */
export function quantity(meta: Range): z.ZodNumber {
  const error = rangeText(meta);
  return z.number({ error }).min(meta.min, { error }).max(meta.max, { error }).register(metas, meta);
}

/** A whole number inside a closed range. */
export function count(meta: Range): z.ZodNumber {
  const error = rangeText(meta, true);
  return z
    .number({ error })
    .int({ error })
    .min(meta.min, { error })
    .max(meta.max, { error })
    .register(metas, meta);
}

/** A share between 0 and 1; screens show it as a percentage. */
export function share(meta: FieldMeta, min = 0, max = 1): z.ZodNumber {
  return quantity({ ...meta, min, max, step: meta.step ?? 0.01, isShare: true });
}

/** Text that must say something: trimmed, 1 to `max` characters in one line, no control characters. */
export function label(meta: FieldMeta, max = 80): z.ZodString {
  const error = `text of 1 to ${max} characters in one line`;
  return z
    .string({ error })
    .trim()
    .min(1, { error })
    .max(max, { error })
    .regex(/^\P{Cc}*$/u, { error })
    .register(metas, meta);
}

/** Text that may be empty. */
export function note(meta: FieldMeta, max = 2000): z.ZodString {
  const error = `text of at most ${plain(max)} characters`;
  return z
    .string({ error })
    .max(max, { error })
    .register(metas, { multiline: true, ...meta });
}

/** One of a few named values, each with the words a screen shows for it. */
export function choice<const V extends string>(
  choices: Readonly<Record<V, string>>,
  meta: FieldMeta,
): z.ZodEnum<{ [K in V]: K }> {
  const values = Object.keys(choices) as V[];
  const error = `one of: ${values.join(', ')}`;
  const schema = z.enum(values, { error }) as unknown as z.ZodEnum<{ [K in V]: K }>;
  return schema.register(metas, { ...meta, choices });
}

/** Yes or no. */
export function flag(meta: FieldMeta): z.ZodBoolean {
  return z.boolean({ error: 'yes or no' }).register(metas, meta);
}

/** A calendar date `YYYY-MM-DD` that exists, 1900 to 2199. */
export function isoDate(meta: FieldMeta): z.ZodString {
  const error = 'a date YYYY-MM-DD from 1900-01-01 to 2199-12-31';
  return z
    .string({ error })
    .regex(/^(19|20|21)\d\d-\d\d-\d\d$/, { error })
    .refine((text) => existsInCalendar(text), { error })
    .register(metas, meta);
}

function existsInCalendar(text: string): boolean {
  const time = Date.parse(`${text}T00:00:00Z`);
  return Number.isFinite(time) && new Date(time).toISOString().startsWith(text);
}

/** The name a row goes by in the catalogue: made by the workbench, never typed by the rider. */
export const id = z
  .string({ error: 'an id' })
  .regex(/^[a-z0-9][a-z0-9-]{0,63}$/, { error: 'an id of 1 to 64 small letters, digits and hyphens' });
