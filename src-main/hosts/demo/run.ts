import type { Handlers } from '../../../shared-types/contract.ts';
import type { Outcome } from '../../../shared-types/outcome.ts';
import type { SheetForm } from '../../../shared-types/sheet.ts';

function valueOf<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.error.message);
}

async function demoTour(handlers: Handlers): Promise<string> {
  const { tourId } = valueOf(await handlers['settings.get']({}));
  if (tourId !== null) return tourId;
  const [first] = valueOf(await handlers['tours.list']({}));
  if (first === undefined) throw new Error('The catalogue holds no tour.');
  return first.id;
}

const forms: readonly SheetForm[] = [
  { as: 'text' },
  { as: 'pdf', paper: 'a4' },
  { as: 'markdown' },
  { as: 'json' },
  { as: 'csv', table: 'scenarios' },
];

/** Compares the demo tour's scenarios and saves the sheet in each format, the plain text first. */
export async function runDemo(handlers: Handlers, print: (text: string) => void): Promise<void> {
  const all = { runId: 'demo', tourId: await demoTour(handlers), scenarioIds: null };
  for (const form of forms) {
    const delivery = valueOf(await handlers['sheet.save']({ ...all, withSwings: true, form }));
    if (delivery.as === 'saved' && form.as !== 'text') print(`Written: ${delivery.path}`);
  }
}
