import { describe, expect, it } from 'vitest';
import type { Comparison, ScenarioResult } from '../../../../shared-types/comparison.ts';
import type { ItemDraft } from '../../../../shared-types/item.ts';
import type { ScenarioDraft } from '../../../../shared-types/scenario.ts';
import type { TourDraft } from '../../../../shared-types/tour.ts';
import { expectNear } from '../../../support/near.ts';
import { openedWorkbench, type TestWorkbench } from '../../../support/open-workbench.ts';

/*
 * Tours and kits at the edge of what a rider can enter: the answer makes sense, and holds figures only.
 */

type Nights = TourDraft['legs'][number]['nights'];

const run = { runId: 'spec', tourId: 'demo-tour', scenarioIds: null } as const;
const fewHistories = 30;
const devices = ['phone', 'navigation', 'camera', 'light', 'reader'].map((name) => `demo-${name}`);

/** Every figure in a result, with its path. */
function figuresIn(value: unknown, path = ''): readonly (readonly [path: string, figure: unknown])[] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => figuresIn(each, `${path}.${key}`));
}

/** Where the contract has a null: all else that is null once was NaN or infinite. */
const mayBeNull =
  /\.(hubCost|firstShort|wallOrder|limitedBy|dominatedBy|price|paidNights|paidNights\.cost|remedies|moreNight|since|alone|withSources)$/;

function nullsIn(value: unknown, path = ''): readonly string[] {
  if (value === null) return mayBeNull.test(path) ? [] : [path];
  if (typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, each]) => nullsIn(each, `${path}.${key}`));
}

function expectSound(comparison: Comparison): void {
  expect(figuresIn(comparison).filter(([, figure]) => !Number.isFinite(figure))).toEqual([]);
  expect(nullsIn(JSON.parse(JSON.stringify(comparison)))).toEqual([]);
  expect(JSON.stringify(comparison)).not.toMatch(/NaN|Infinity|undefined/);
  for (const result of comparison.scenarios) expectInBounds(result);
}

const rounding = 1e-12;
/** Stored energy travels in hundredths. */
const hundredthsWh = 0.005;

function expectInBounds(result: ScenarioResult): void {
  const { margin, risk, legs, reserveWh, spilledShare, stored, days } = result;
  expect(margin.value).toBeGreaterThanOrEqual(-1);
  expect(margin.value).toBeLessThanOrEqual(3);
  expect(margin.usual).toBeGreaterThanOrEqual(margin.value);
  expect(margin.limitedBy === null).toBe(margin.capped);
  expect(risk.low).toBeLessThanOrEqual(risk.share + rounding);
  expect(risk.high).toBeGreaterThanOrEqual(risk.share - rounding);
  for (const { risk: ofLeg } of legs) expect(ofLeg.share).toBeLessThanOrEqual(risk.share);
  expect(legs.some(({ risk: ofLeg }) => ofLeg.share > 0)).toBe(risk.share > 0);
  expect(reserveWh.p10).toBeLessThanOrEqual(reserveWh.p90);
  expect(spilledShare).toBeGreaterThanOrEqual(0);
  expect(spilledShare).toBeLessThanOrEqual(1);
  for (const wh of stored.highWh) expect(wh).toBeLessThanOrEqual(stored.capacityWh + hundredthsWh);
  for (const { wall, panel, hub, used, lost, spilled, stored: change } of days) {
    const income = wall + panel + hub;
    expectNear(used + lost + spilled + change, income, 1e-9 * (income + 1), 'energy of a day, Wh');
  }
}

/** A workbench whose comparisons draw few histories. */
async function quickWorkbench(): Promise<TestWorkbench> {
  const workbench = openedWorkbench();
  const settings = await workbench.value('settings.get', {});
  const sky = { ...settings.sky, histories: fewHistories };
  await workbench.value('settings.save', { settings: { ...settings, sky } });
  return workbench;
}

async function changeTour({ value }: TestWorkbench, change: (tour: TourDraft) => TourDraft): Promise<void> {
  const [tour] = await value('tours.list', {});
  const { id, ...draft } = tour!;
  await value('tours.save', { id, tour: change(draft) });
}

const everyNight =
  (kind: Nights['kinds'][number], outletsAtStops: number) =>
  (tour: TourDraft): TourDraft => ({
    ...tour,
    legs: tour.legs.map((leg) => ({
      ...leg,
      nights: { ...leg.nights, by: 'pattern', kinds: [kind] },
      dayStops: leg.dayStops.map((stop) => ({ ...stop, outlets: outletsAtStops })),
    })),
  });

async function changeItem(
  { value }: TestWorkbench,
  itemId: string,
  change: (item: ItemDraft) => ItemDraft,
): Promise<void> {
  const { id, ...draft } = (await value('items.list', {})).find((item) => item.id === itemId)!;
  await value('items.save', { id, item: change(draft) });
}

/** Saves a scenario like the demo's banks, and compares it alone. */
async function compared(
  { value }: TestWorkbench,
  changes: Partial<ScenarioDraft> = {},
): Promise<ScenarioResult> {
  const scenarios = await value('scenarios.list', {});
  const { id: _, ...draft } = scenarios.find(({ id }) => id === 'demo-banks')!;
  const { id } = await value('scenarios.save', { scenario: { ...draft, label: 'Changed', ...changes } });
  const comparison = await value('comparison.run', { ...run, scenarioIds: [id] });
  expectSound(comparison);
  return comparison.scenarios[0]!;
}

describe('a comparison at the edge', { timeout: 30_000 }, () => {
  it('is sound where all is as in the demo', async () => {
    const { value } = await quickWorkbench();
    expectSound(await value('comparison.run', run));
  });

  it('falls short at once with no use to be had: empty batteries, nothing carried, no wall', async () => {
    const workbench = await quickWorkbench();
    await changeTour(workbench, everyNight('none', 0));
    for (const itemId of ['demo-phone', 'demo-navigation'])
      await changeItem(workbench, itemId, (item) =>
        item.kind === 'device' ? { ...item, capacity: { as: 'wh', wh: 0 } } : item,
      );
    const { margin, risk, firstShort, reserveWh } = await compared(workbench, { kit: [] });
    expect(margin).toMatchObject({ value: -1, capped: false, limitedBy: { day: 1 } });
    expect(risk.share).toBe(1);
    expect(firstShort).toMatchObject({ day: 1, earliestDay: 1 });
    expect(reserveWh.p90).toBeLessThan(50);
  });

  it('lives off the devices’ own batteries with nothing carried', async () => {
    const workbench = await quickWorkbench();
    const { carries, margin, risk, firstShort, wallOrder, values } = await compared(workbench, { kit: [] });
    expect(carries).toBe('nothing');
    expect(values).toMatchObject({ cost: 0, grams: 0 });
    // No charger is carried: a phone's own 15 Wh meet about a day and a half of its use, and the tour has 24 days.
    expect(margin.value).toBeLessThan(-0.8);
    expect(margin.value).toBeGreaterThan(-1);
    expect(risk.share).toBe(1);
    expect(firstShort!.day).toBeLessThanOrEqual(3);
    expect(wallOrder).toBeNull();
  });

  it('needs nothing where no device comes along', async () => {
    const workbench = await quickWorkbench();
    await changeTour(workbench, (tour) => ({ ...tour, leftAtHome: devices }));
    const { margin, risk, firstShort, devices: ledgers, wallOrder, days } = await compared(workbench);
    expect(margin).toMatchObject({ value: 3, capped: true, limitedBy: null, usual: 3, usualCapped: true });
    expect([risk.share, firstShort, ledgers, wallOrder]).toEqual([0, null, [], null]);
    expect(days.every(({ demand, used, unserved }) => demand + used + unserved === 0)).toBe(true);
  });

  it('never runs out of a must-have where only nice-to-haves come along', async () => {
    const workbench = await quickWorkbench();
    await changeTour(workbench, (tour) => ({ ...tour, leftAtHome: ['demo-phone', 'demo-navigation'] }));
    const { margin, risk } = await compared(workbench, { kit: [] });
    expect(margin).toMatchObject({ capped: true, limitedBy: null });
    expect(risk.share).toBe(0);
  });

  it('counts a bank of no capacity for no bank', async () => {
    const workbench = await quickWorkbench();
    await changeItem(workbench, 'demo-bank-20', (item) =>
      item.kind === 'bank' ? { ...item, capacity: { as: 'wh', wh: 0 }, measuredDeliverableWh: null } : item,
    );
    const kitOf = (...itemIds: string[]) => ({ kit: itemIds.map((itemId) => ({ itemId, quantity: 1 })) });
    const empty = await compared(workbench, kitOf('demo-bank-20', 'demo-charger-30'));
    const none = await compared(workbench, kitOf('demo-charger-30'));
    expect(empty.stored.capacityWh).toBe(none.stored.capacityWh);
    expectNear(empty.margin.value, none.margin.value, 0.0025, 'margin');
  });

  it('carries far more than planned with a wall every night, and wastes nothing', async () => {
    const workbench = await quickWorkbench();
    const before = await compared(workbench);
    await changeTour(workbench, everyNight('wall', 2));
    const { margin, risk, spilledShare } = await compared(workbench);
    // Full each morning, banks and batteries hold some 110 Wh for must-haves that use under 20 Wh a day: even a day of
    // more than twice the mean leaves room to double the use.
    expect(margin.value).toBeGreaterThan(1);
    expect(margin.value).toBeGreaterThan(before.margin.value);
    expect([risk.share, spilledShare]).toEqual([0, 0]);
  });

  it('spends its banks once with no wall and no source', async () => {
    const workbench = await quickWorkbench();
    await changeTour(workbench, everyNight('none', 0));
    const { margin, risk, days, stored, firstShort } = await compared(workbench);
    expect(margin.value).toBeLessThan(0);
    expect(risk.share).toBe(1);
    expect(firstShort).not.toBeNull();
    // Before the first ride the rider is at home: what is used there is made good.
    expect(days.slice(1).every(({ wall, panel, hub }) => wall + panel + hub === 0)).toBe(true);
    const spent = days.slice(1).reduce((sum, { used, lost }) => sum + used + lost, 0);
    expect(spent).toBeLessThanOrEqual(stored.capacityWh);
  });

  it('falls to nothing with use beyond any supply', async () => {
    const workbench = await quickWorkbench();
    await changeItem(workbench, 'demo-phone', (item) =>
      item.kind === 'device' ? { ...item, use: { as: 'day', whPerDay: 500 } } : item,
    );
    const { margin, firstShort, risk } = await compared(workbench);
    expect(margin.value).toBeLessThan(-0.9);
    expect(risk.share).toBe(1);
    expect(firstShort).toMatchObject({ device: 'Phone', day: 1, earliestDay: 1 });
  });

  it('gets through a polar winter, where no cell outside is ever charged', async () => {
    const workbench = await quickWorkbench();
    await changeTour(workbench, (tour) => ({
      ...tour,
      startDate: '2027-12-20',
      legs: tour.legs.map((leg) => ({
        ...leg,
        place: { as: 'coordinates', latDeg: 78, lonDeg: 15, elevationM: 4000 },
      })),
    }));
    expectSound(await workbench.value('comparison.run', run));
  });

  it.each([1, 366])('answers for a tour of days: %d', async (days) => {
    const workbench = await quickWorkbench();
    await changeTour(workbench, (tour) => ({ ...tour, legs: [{ ...tour.legs[0]!, days }] }));
    const result = await compared(workbench);
    expect(result.days).toHaveLength(days);
    expect(result.stored.middleWh).toHaveLength(days * result.stored.pointsPerDay);
  });
});
