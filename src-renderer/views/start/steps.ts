import { z } from 'zod';
import { badInput, type FieldError } from '../../../shared-types/outcome.ts';
import { ownStart, type OwnStart } from '../../../shared-types/own-start.ts';

/** The way to a first own answer, in order. */
export const steps = [
  { name: 'Devices', question: 'What do you keep charged?' },
  { name: 'Kit', question: 'What have you got, or think of getting?' },
  { name: 'Road', question: 'Where do you ride, when, and for how long?' },
  { name: 'Nights', question: 'Where do you sleep?' },
  { name: 'Methods', question: 'What will be compared?' },
] as const;
export type Step = (typeof steps)[number]['name'];

/** What of a draft is asked on a step, by the beginning of its paths. */
function isAskedOn(step: Step, path: string, draft: OwnStart): boolean {
  const [part, at, ...rest] = path.split('.');
  if (part === 'items') {
    const kind = at === undefined ? 'device' : draft.items[Number(at)]?.kind;
    return step === (kind === 'device' ? 'Devices' : 'Kit');
  }
  if (part === 'tour') return step === (rest.includes('nights') ? 'Nights' : 'Road');
  return step === 'Methods';
}

/** What is allowed where a step of a draft is not, with paths as the call would give them. */
export function faultsOf(step: Step, draft: OwnStart): readonly FieldError[] {
  const parsed = z.safeParse(ownStart, draft);
  if (parsed.success) return [];
  return badInput(parsed.error, draft)
    .error.fields.filter(({ path }) => isAskedOn(step, path, draft))
    .map((field) => ({ ...field, path: `own.${field.path}` }));
}
