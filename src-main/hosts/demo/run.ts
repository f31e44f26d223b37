import type { Handlers } from '../../../shared-types/contract.ts';
import type { Outcome } from '../../../shared-types/outcome.ts';

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

/** Compares the demo tour's scenarios and saves the sheet in each format, the plain text first. */
export async function runDemo(handlers: Handlers, print: (text: string) => void): Promise<void> {
  const all = { tourId: await demoTour(handlers), scenarioIds: null };
  valueOf(await handlers['comparison.run']({ ...all, runId: 'demo' }));
  valueOf(await handlers['sheet.save']({ ...all, format: 'text' }));
  for (const format of ['pdf', 'csv'] as const) {
    const delivery = valueOf(await handlers['sheet.save']({ ...all, format }));
    if (delivery.as === 'saved') print(`Written: ${delivery.path}`);
  }
}
