import type { z } from 'zod';

/**
 * A list kept as JSON in one column. The tables hold that it is a list and how long; what stands in it is held here, by the
 * schema it was stored under, because a file may have been edited by another program. `what` names it in the fault.
 */
export function storedJson<Shape extends z.ZodType>(
  schema: Shape,
  text: string,
  what: string,
): z.output<Shape> {
  const parsed = schema.safeParse(JSON.parse(text));
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    throw new Error(
      `The catalogue has ${what} that break a rule: ${issue?.path.join('.')}: ${issue?.message}.`,
    );
  }
  return parsed.data;
}
