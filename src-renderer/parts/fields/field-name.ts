import { z } from 'zod';
import { fieldMeta, type FieldMeta } from '../../../shared-types/field.ts';
import { groupWords } from './words.ts';

/** The label of the field, or the head of the group, at a path of a schema; null where the path leads nowhere. */
export function fieldNameAt(schema: z.core.$ZodType, path: readonly string[]): string | null {
  const [key, ...rest] = path;
  if (key === undefined) return fieldMeta(schema)?.label ?? null;
  const part = partOf(schema, key);
  if (part === null) return null;
  return fieldNameAt(part, rest) ?? groupWords(key);
}

/** The meta of the field at a path of a schema; null where there is no field of ours. */
export function fieldMetaAt(schema: z.core.$ZodType, path: readonly string[]): FieldMeta | null {
  const [key, ...rest] = path;
  if (key === undefined) return fieldMeta(schema) ?? null;
  const part = partOf(schema, key);
  return part === null ? null : fieldMetaAt(part, rest);
}

function partOf(schema: z.core.$ZodType, key: string): z.core.$ZodType | null {
  if (schema instanceof z.ZodNullable || schema instanceof z.ZodOptional) return partOf(schema.unwrap(), key);
  if (schema instanceof z.ZodArray) return schema.element;
  if (schema instanceof z.ZodObject) return (schema.shape as z.core.$ZodShape)[key] ?? null;
  if (!(schema instanceof z.ZodDiscriminatedUnion)) return null;
  const parts = schema.options.map((option) => partOf(option, key));
  return parts.find((part) => part !== null) ?? null;
}
