import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { answer } from '../../shared-types/answer.ts';
import type { CallInput, CallName, CallResult } from '../../shared-types/contract.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import { openWorkbench } from '../../src-main/workbench/open.ts';
import { medianMs } from './measure.ts';

const manyItems = 10_000;

/** Times of what a rider waits for, through the same calls the screens make; ms. */
export async function workbenchTimes(): Promise<Readonly<Record<string, number>>> {
  const dataFolder = mkdtempSync(join(tmpdir(), 'chargewright-bench-'));
  const workbench = openWorkbench({
    dataFolder,
    host: 'loopback',
    version: 'bench',
    files: {
      save: () => Promise.resolve({ as: 'cancelled' }),
      choose: () => Promise.resolve({ as: 'cancelled' }),
    },
  });
  const call = async <N extends CallName>(name: N, input: CallInput<N>): Promise<CallResult<N>> => {
    const outcome = (await answer(workbench.handlers, name, input, (_, fault) => {
      throw fault;
    })) as Outcome<CallResult<N>>;
    if (!outcome.ok) throw new Error(outcome.error.message);
    return outcome.value;
  };
  try {
    const all = { tourId: 'demo-tour', scenarioIds: null } as const;
    const { preferences } = await call('settings.get', {});
    const times = {
      scenarioMs: await medianMs(() => call('comparison.run', { ...all, scenarioIds: ['demo-panel'] })),
      comparisonMs: await medianMs(() => call('comparison.run', all)),
      rerankMs: await medianMs(() => call('comparison.rank', { tourId: all.tourId, preferences })),
      sheetMs: await medianMs(() => call('sheet.save', { ...all, format: 'pdf' })),
    };
    await fillCatalogue(call);
    return { ...times, catalogueListMs: await medianMs(() => call('items.list', {})) };
  } finally {
    workbench.close();
    rmSync(dataFolder, { recursive: true, force: true });
  }
}

type BenchCall = <N extends CallName>(name: N, input: CallInput<N>) => Promise<CallResult<N>>;

async function fillCatalogue(call: BenchCall): Promise<void> {
  const aCsv = 2500;
  for (let part = 0; part < manyItems / aCsv; part += 1) {
    const rows = Array.from({ length: aCsv }, (_, row) => `accessory,Cable ${part}-${row},20,5`);
    await call('items.readCsv', { text: ['kind,label,mass_g,price', ...rows].join('\n'), store: true });
  }
}
