import type { z } from 'zod';
import { valueAt } from './carry-over.ts';

type Issue = z.core.$ZodIssue;

/** Refusals of a value, each of which a form shows beside its field. */
const ofValues: readonly Issue['code'][] = [
  'too_small',
  'too_big',
  'invalid_format',
  'not_multiple_of',
  'custom',
];

/**
 * Whether a draft is built as its schema says, whatever its values: then its form can show it and say what is refused. One
 * written by another version of the program may not be.
 */
export function isBuiltAs(schema: z.ZodType, draft: unknown): boolean {
  const { error } = schema.safeParse(draft);
  return error?.issues.every((issue) => ofValues.includes(issue.code) || isNumberless(issue, draft)) ?? true;
}

/** A field of a number that holds none, as it does while nothing that is understood stands in it. */
function isNumberless(issue: Issue, draft: unknown): boolean {
  if (issue.code !== 'invalid_type' || !['number', 'int'].includes(issue.expected)) return false;
  const value = valueAt(draft, issue.path.map(String));
  return value === null || typeof value === 'number';
}
