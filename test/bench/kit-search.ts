import { noLimits } from '../../shared-types/limits.ts';
import { demoItems, demoTours } from '../../db/demo/demo.ts';
import type { ItemDraft } from '../../shared-types/item.ts';
import type { KitSearchResult } from '../../shared-types/kit-search.ts';
import { medianMs } from './measure.ts';
import { withWorkbench, type BenchCall } from './open-bench.ts';

const histories = 200;
const daysALeg = 10;
const runs = 3;
const sizes = [8, 10, 12, 14] as const;
const timed = 12;

const demo = (id: string) => demoItems.find((item) => item.id === id)!;
const euros = (price: number) => ({ minor: price * 100, currency: 'EUR' });

function bank(label: string, mAh: number, massG: number, price: number): ItemDraft {
  const like = demo('demo-bank-20');
  if (like.kind !== 'bank') throw new Error('The demo bank is no bank.');
  const { id: _, ...draft } = like;
  return {
    ...{ ...draft, label, massG, price: euros(price), state: 'considering' },
    ...{ capacity: { as: 'mah', mAh, cellV: 3.7 }, measuredDeliverableWh: null },
  };
}

function panel(label: string, ratedW: number, massG: number, price: number): ItemDraft {
  const like = demo('demo-panel-20');
  if (like.kind !== 'panel') throw new Error('The demo panel is no panel.');
  const { id: _, ...draft } = like;
  return { ...draft, label, ratedW, massG, price: euros(price) };
}

function charger(label: string, totalW: number, massG: number, price: number): ItemDraft {
  const like = demo('demo-charger-30');
  if (like.kind !== 'wall-charger') throw new Error('The demo charger is no charger.');
  const { id: _, ...draft } = like;
  const outputs = [{ standard: 'pd' as const, powerW: totalW }];
  return { ...draft, label, totalW, outputs, massG, price: euros(price), state: 'considering' };
}

/** What a rider might weigh up beside the demo's kit. */
const considered: readonly ItemDraft[] = [
  bank('5 Ah bank', 5000, 120, 15),
  bank('26.8 Ah bank', 26_800, 480, 60),
  panel('10 W panel', 10, 320, 55),
  charger('65 W charger', 65, 160, 45),
  charger('20 W charger', 20, 55, 15),
  bank('13 Ah bank', 13_000, 250, 28),
  panel('28 W panel', 28, 780, 110),
];

/** The order in which items join as a search grows. */
const demoFirst = [
  ...['demo-bank-20', 'demo-bank-10', 'demo-panel-20', 'demo-panel-6', 'demo-hub-3', 'demo-converter'],
  'demo-charger-30',
];

/** Times of the kit search over 30 days, and a table of how it grows; nothing is optional but the items counted. */
export async function kitSearchFigures(): Promise<Readonly<Record<string, number>>> {
  return withWorkbench(async (call) => {
    const itemIds = [...demoFirst, ...(await store(call))];
    const rows: Record<string, Record<string, number>> = {};
    for (const size of sizes) rows[`${size} items`] = rowOf(await search(call, itemIds.slice(0, size)));
    console.table(rows);
    const kitSearch12Ms = await medianMs(() => search(call, itemIds.slice(0, timed)), { runs });
    return { kitSearch12Ms };
  });
}

async function store(call: BenchCall): Promise<readonly string[]> {
  const settings = await call('settings.get', {});
  await call('settings.save', { settings: { ...settings, sky: { ...settings.sky, histories } } });
  const { id, ...tour } = demoTours[0]!;
  await call('tours.save', {
    id,
    tour: { ...tour, legs: tour.legs.map((leg) => ({ ...leg, days: daysALeg })) },
  });
  const stored = [];
  for (const item of considered) stored.push(await call('items.save', { item }));
  return stored.map((item) => item.id);
}

async function search(call: BenchCall, optional: readonly string[]): Promise<KitSearchResult> {
  const items = await call('items.list', {});
  const out = items.filter(({ id, kind }) => kind !== 'device' && !optional.includes(id));
  return call('kits.search', {
    ...{ runId: 'bench', tourId: 'demo-tour', scenarioId: 'demo-banks' },
    choices: out.map(({ id }) => ({ itemId: id, choice: 'not' })),
    limits: noLimits,
  });
}

function rowOf({ kits: found, tally, seconds }: KitSearchResult): Record<string, number> {
  const percent = (part: number): number => Math.round((1000 * part) / tally.kits) / 10;
  return {
    kits: tally.kits,
    'unbeaten kits': found.length,
    'pruned, %': percent(tally.kits - tally.walked),
    'idle item, %': percent(tally.idleItem),
    'too little supply, %': percent(tally.tooLittleSupply),
    'stopped early, %': percent(tally.stoppedEarly),
    seconds: Math.round(seconds * 100) / 100,
    'kits a second': Math.round(tally.kits / seconds),
  };
}
