import { z } from 'zod';
import { fieldMeta, type FieldMeta } from '../../../shared-types/field.ts';
import { money } from '../../../shared-types/money.ts';
import { groupLabel } from './words.ts';

type LeafKind = 'text' | 'date' | 'choice' | 'flag';
type Leaf = { [K in LeafKind]: { readonly as: K; readonly meta: FieldMeta } }[LeafKind];
/** `orNone`: an empty field is an answer too. */
type NumberLeaf = {
  [K in 'number' | 'share']: { readonly as: K; readonly meta: FieldMeta; readonly orNone: boolean };
}['number' | 'share'];
type GroupKind = 'group' | 'optional' | 'list';
type Group = {
  [K in GroupKind]: { readonly as: K; readonly label: string; readonly fields: readonly Field[] };
}[GroupKind];

/** How a value is drawn: one control, or a group, choice or list of further fields. */
export type Shape =
  | Leaf
  | NumberLeaf
  | Group
  | { readonly as: 'money'; readonly label: string; readonly orNone: boolean }
  | { readonly as: 'either'; readonly label: string; readonly options: readonly Option[] };

export interface Field {
  readonly key: string;
  readonly shape: Shape;
}

/** One branch of a discriminated union, told apart by its `as`. */
export interface Option {
  readonly value: string;
  readonly fields: readonly Field[];
}

/** The fields of an object schema in the order it declares them; fixed values (`kind`, `as`) are not fields. */
export function fieldsOf(schema: z.core.$ZodType): readonly Field[] {
  if (!(schema instanceof z.ZodObject)) return [];
  return Object.entries(schema.shape as z.core.$ZodShape).flatMap(([key, part]) => {
    const shape = shapeOf(key, part);
    return shape === null ? [] : [{ key, shape }];
  });
}

/** How to draw the value of `key`; null for a fixed value or a schema no form has a part for. */
export function shapeOf(key: string, schema: z.core.$ZodType): Shape | null {
  const orNone = schema instanceof z.ZodNullable;
  const given = orNone ? schema.unwrap() : schema;
  if (given === money) return { as: 'money', label: groupLabel(key), orNone };
  const meta = fieldMeta(schema);
  if (meta !== undefined) return leafOf(given, meta, orNone);
  const label = groupLabel(key);
  if (schema instanceof z.ZodObject) return { as: 'group', label, fields: fieldsOf(schema) };
  if (orNone) return { as: 'optional', label, fields: fieldsOf(given) };
  if (schema instanceof z.ZodArray) return { as: 'list', label, fields: fieldsOf(schema.element) };
  if (schema instanceof z.ZodDiscriminatedUnion) return { as: 'either', label, options: optionsOf(schema) };
  return null;
}

function leafOf(schema: z.core.$ZodType, meta: FieldMeta, orNone: boolean): Shape {
  if (schema instanceof z.ZodNumber) return { as: meta.isShare === true ? 'share' : 'number', meta, orNone };
  if (schema instanceof z.ZodBoolean) return { as: 'flag', meta };
  if (meta.choices !== undefined) return { as: 'choice', meta };
  return { as: takesDatesOnly(schema) ? 'date' : 'text', meta };
}

function takesDatesOnly(schema: z.core.$ZodType): boolean {
  return z.safeParse(schema, '2000-01-01').success && !z.safeParse(schema, 'a word').success;
}

function optionsOf(schema: z.ZodDiscriminatedUnion): readonly Option[] {
  return schema.options.flatMap((option) => {
    if (!(option instanceof z.ZodObject)) return [];
    const tag: unknown = (option.shape as Record<string, unknown>)['as'];
    return tag instanceof z.ZodLiteral ? [{ value: String(tag.value), fields: fieldsOf(option) }] : [];
  });
}
