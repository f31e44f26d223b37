import type { z } from 'zod';
import { StorageError } from './storage-error.ts';

/**
 * A list kept as JSON in one column. The tables hold that it is a list and how long; what stands in it is held here, by the
 * schema it was stored under, because a file may have been edited by another program. `what` names it in the fault.
 */
export function storedJson<Shape extends z.ZodType>(
  schema: Shape,
  text: string,
  what: string,
): z.output<Shape> {
  const parsed = schema.safeParse(valueOf(text));
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  throw new StorageError(
    'damaged',
    `The catalogue has ${what} that break a rule: ${issue?.path.join('.')}: ${issue?.message}. Restore a backup from before ` +
      'it was edited or damaged, under About; nothing was changed.',
  );
}

/** Undefined, which no schema takes, where the text is no JSON. */
function valueOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
