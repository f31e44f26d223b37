import type { z } from 'zod';
import type { FieldError } from '../../../shared-types/outcome.ts';
import { fieldNameAt } from './field-name.ts';

/** What keeps a draft from being stored: `‘Days’ is refused`. `nameOf` names the field at a path below the draft. */
export function refusedWords(
  errors: readonly FieldError[],
  nameOf: (path: readonly string[]) => string,
): string {
  const [first, ...more] = errors;
  if (first === undefined) return 'the catalogue did not take it';
  const [, ...path] = first.path.split('.');
  const name = nameOf(path);
  return more.length === 0 ? `${name} is refused` : `${name} and ${more.length} more are refused`;
}

/** The label of the field as its form shows it. */
export function quotedName(schema: z.core.$ZodType, path: readonly string[]): string {
  return `‘${fieldNameAt(schema, path) ?? path.join(' ')}’`;
}
