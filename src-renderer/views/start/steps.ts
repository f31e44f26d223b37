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

/** The step that asks for what lies at a path of a draft. */
function stepOf(path: string, draft: OwnStart): Step {
  const [part, at, ...rest] = path.split('.');
  if (part === 'items') {
    const kind = at === undefined ? 'device' : draft.items[Number(at)]?.kind;
    return kind === 'device' ? 'Devices' : 'Kit';
  }
  if (part === 'tour') return rest.includes('nights') ? 'Nights' : 'Road';
  return 'Methods';
}

const root = 'own.';

/** The number of the first step on which something was refused when all was stored; the last where no step asks for it. */
export function refusedStep(errors: readonly FieldError[], draft: OwnStart): number {
  const refused = errors.map(({ path }) => stepOf(path.slice(root.length), draft));
  const first = steps.findIndex(({ name }) => refused.includes(name));
  return first < 0 ? steps.length - 1 : first;
}

/** What is allowed where a step of a draft is not, with paths as the call would give them. */
export function faultsOf(step: Step, draft: OwnStart): readonly FieldError[] {
  const parsed = z.safeParse(ownStart, draft);
  if (parsed.success) return [];
  return badInput(parsed.error, draft)
    .error.fields.filter(({ path }) => stepOf(path, draft) === step)
    .map((field) => ({ ...field, path: `${root}${field.path}` }));
}
