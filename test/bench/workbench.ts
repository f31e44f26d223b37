import { medianMs } from './measure.ts';
import { withWorkbench, type BenchCall } from './open-bench.ts';

const manyItems = 10_000;

/** Times of what a rider waits for, through the same calls the screens make; ms. */
export async function workbenchTimes(): Promise<Readonly<Record<string, number>>> {
  return withWorkbench(async (call) => {
    const all = { tourId: 'demo-tour', scenarioIds: null } as const;
    const run = { ...all, runId: 'bench' } as const;
    const settings = await call('settings.get', {});
    const { preferences, sky } = settings;
    let seed = sky.seed;
    // The walks of the last comparison are kept: only other weather is walked.
    const before = () =>
      call('settings.save', { settings: { ...settings, sky: { ...sky, seed: (seed += 1) } } });
    const times = {
      scenarioMs: await medianMs(() => call('comparison.run', { ...run, scenarioIds: ['demo-panel'] }), {
        before,
      }),
      comparisonMs: await medianMs(() => call('comparison.run', run), { before }),
      legSunMs: await medianMs(() =>
        call('tours.legSun', { tourId: all.tourId, leg: 0, lying: { as: 'aimed' }, by: 'month' }),
      ),
      legRideMs: await medianMs(() =>
        call('tours.legRide', { tourId: all.tourId, leg: 1, scenarioId: 'demo-hub' }),
      ),
      rerankMs: await medianMs(() => call('comparison.rank', { tourId: all.tourId, preferences })),
      sheetMs: await medianMs(() =>
        call('sheet.save', { ...run, withSwings: true, form: { as: 'pdf', paper: 'a4' } }),
      ),
    };
    await fillCatalogue(call);
    return { ...times, catalogueListMs: await medianMs(() => call('items.list', {})) };
  });
}

/** Every kind in turn: each has rows of its own beside the common one. */
const kindRows = [
  'accessory,Cable,20,5,,,,,,,,',
  'device,Lamp,170,60,10.8,bc-1.2,5,,,,0.4,',
  'bank,Bank,350,45,74,pd,18,pd:20 bc-1.2:7.5,,,,',
  'panel,Panel,560,84,,,,,type-c-3a,15,,20',
] as const;
const header =
  'kind,label,mass_g,price,capacity_wh,input_standard,input_w,outputs,output_standard,output_w,use_riding_w,rated_w';

async function fillCatalogue(call: BenchCall): Promise<void> {
  const aCsv = 2500;
  for (let part = 0; part < manyItems / aCsv; part += 1) {
    const rows = Array.from({ length: aCsv }, (_, row) => kindRows[row % kindRows.length]!);
    const { problems } = await call('items.addCsv', {
      text: [header, ...rows].join('\n'),
      leaveOut: [],
      passOverErrors: false,
    });
    if (problems.length > 0) throw new Error(JSON.stringify(problems[0]));
  }
}
