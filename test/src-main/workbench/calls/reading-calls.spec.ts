import { describe, expect, it } from 'vitest';
import type { CallInput } from '../../../../shared-types/contract.ts';
import { addDays, todayFrom } from '../../../../shared-types/dates.ts';
import { estimateLevel, type ItemEstimate } from '../../../../shared-types/field-log.ts';
import { openedWorkbench, type TestWorkbench } from '../../../support/open-workbench.ts';

type Asked = CallInput<'readings.save'>['reading'];
type Delivery = Extract<Asked, { as: 'delivery' }>;

const today = todayFrom(new Date());
const bankId = 'demo-bank-20';
/** A comparison takes its time on a busy machine. */
const patience = { timeout: 30_000 };
const share = (value: number) => ({ as: 'share', share: value }) as const;
const lights = (lit: number) => ({ as: 'lights', lit }) as const;

const delivered: Delivery = {
  as: 'delivery',
  itemId: bankId,
  on: today,
  note: '',
  energy: { as: 'meter-wh', wh: 55 },
  before: share(1),
  after: share(0),
};

const taken = (wh: number): Asked => ({
  ...delivered,
  as: 'intake',
  energy: { as: 'meter-wh', wh },
  before: share(0),
  after: share(1),
});

const used: Extract<Asked, { as: 'use' }> = {
  as: 'use',
  itemId: 'demo-phone',
  on: today,
  note: '',
  beforeShare: 0.9,
  afterShare: 0.5,
  hours: 8,
  during: 'riding',
};

async function save(workbench: TestWorkbench, ...readings: readonly Asked[]): Promise<void> {
  for (const reading of readings) await workbench.value('readings.save', { reading });
}

const counted = (...wh: readonly number[]): readonly Delivery[] =>
  wh.map((each) => ({ ...delivered, energy: { as: 'meter-wh', wh: each } }));

async function estimateOf(
  workbench: TestWorkbench,
  measure: ItemEstimate['measure'],
): Promise<ItemEstimate | undefined> {
  const { estimates } = await workbench.value('readings.log', {});
  return estimates.find((each) => each.measure === measure);
}

describe('readings.save refuses', () => {
  it.each<{ what: string; reading: Asked; path: string; allowed: string }>([
    { what: 'a date to come', reading: { ...delivered, on: addDays(today, 1) }, path: 'on', allowed: today },
    { what: '31 February', reading: { ...delivered, on: '2026-02-31' }, path: 'on', allowed: 'YYYY-MM-DD' },
    {
      what: 'five lights of four',
      reading: { as: 'charge', itemId: bankId, on: today, note: '', state: lights(5) },
      path: 'state.lit',
      allowed: '0 to 4',
    },
    {
      what: 'lights of a device',
      reading: { as: 'charge', itemId: 'demo-phone', on: today, note: '', state: lights(1) },
      path: 'state.lit',
      allowed: 'per cent',
    },
    {
      what: 'more than 100 per cent',
      reading: { ...used, beforeShare: 1.01 },
      path: 'beforeShare',
      allowed: 'from 0 to 1',
    },
    {
      what: 'a meter at 0 V',
      reading: { ...delivered, energy: { as: 'meter-mah', mAh: 9000, volts: 0 } },
      path: 'energy.volts',
      allowed: 'from 1 to 60 V',
    },
    {
      what: 'a bank that delivers and is fuller',
      reading: { ...delivered, before: share(0.3), after: share(0.6) },
      path: 'after.share',
      allowed: 'less than before',
    },
    {
      what: 'a bank that takes in and is emptier',
      reading: { ...taken(30), before: lights(3), after: lights(2) } as Asked,
      path: 'after.lit',
      allowed: 'more than before',
    },
    {
      what: 'a device that is used and is fuller',
      reading: { ...used, afterShare: 0.95 },
      path: 'afterShare',
      allowed: 'less than before',
    },
    {
      what: 'sun on a bank',
      reading: {
        as: 'sun',
        itemId: bankId,
        on: today,
        note: '',
        energy: { as: 'meter-wh', wh: 9 },
        hours: 2,
      },
      path: 'as',
      allowed: 'of a bank',
    },
    {
      what: 'a reading of a cable',
      reading: { ...delivered, itemId: 'demo-cables' },
      path: 'itemId',
      allowed: 'a bank, device, panel or generator hub',
    },
  ])('$what, and says what is allowed', async ({ reading, path, allowed }) => {
    const { call, value, faults } = openedWorkbench();
    const outcome = await call('readings.save', { reading });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'bad-input' } });
    const fields = outcome.ok ? [] : outcome.error.fields;
    expect(fields.map((field) => field.path)).toEqual([`reading.${path}`]);
    expect(fields[0]!.allowed).toContain(allowed);
    expect((await value('readings.log', {})).readings).toEqual([]);
    expect(faults).toEqual([]);
  });

  it('an item that is not there', async () => {
    const outcome = await openedWorkbench().call('readings.save', {
      reading: { ...delivered, itemId: 'gone' },
    });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'not-found' } });
    expect(outcome.ok ? [] : outcome.error.fields.map(({ path }) => path)).toEqual(['reading.itemId']);
  });
});

describe('readings.log', () => {
  it('puts readings in order of date, the newest first', async () => {
    const workbench = openedWorkbench();
    const days = [addDays(today, -2), today, addDays(today, -9)];
    await save(workbench, ...days.map((on): Asked => ({ ...delivered, on })));
    const { readings } = await workbench.value('readings.log', {});
    expect(readings.map(({ on }) => on)).toEqual(days.toSorted().toReversed());
  });

  it('puts a removed reading back under its id', async () => {
    const workbench = openedWorkbench();
    await save(workbench, delivered);
    const [reading] = (await workbench.value('readings.log', {})).readings;
    const { id, ...draft } = await workbench.value('readings.remove', { id: reading!.id });
    expect((await workbench.value('readings.log', {})).readings).toEqual([]);
    await workbench.value('readings.save', { id, reading: draft });
    expect((await workbench.value('readings.log', {})).readings).toEqual([reading]);
    expect(await workbench.call('readings.remove', { id: 'gone' })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
  });

  it('says how many readings are still missing, and gives no interval', async () => {
    const workbench = openedWorkbench();
    await save(workbench, ...counted(55));
    expect(await estimateOf(workbench, 'bank-delivery')).toMatchObject({
      readings: 1,
      missing: 2,
      estimate: null,
      offer: { as: 'none' },
    });
  });

  it('does not count lights that set no upper bound', async () => {
    const workbench = openedWorkbench();
    await save(workbench, ...counted(54, 56), { ...delivered, before: lights(4), after: lights(4) });
    expect(await estimateOf(workbench, 'bank-delivery')).toMatchObject({ readings: 2, missing: 1 });
  });

  it('estimates what a bank delivers, with its interval', async () => {
    const workbench = openedWorkbench();
    await save(workbench, ...counted(54, 55, 56));
    const { estimate } = (await estimateOf(workbench, 'bank-delivery'))!;
    expect(estimate!.value).toBeCloseTo(55, 0);
    expect(estimate!.low).toBeLessThan(54);
    expect(estimate!.high).toBeGreaterThan(56);
    expect(estimateLevel).toBe(0.95);
  });

  it('takes mAh at the voltage of the meter for as many Wh', async () => {
    const workbench = openedWorkbench();
    const mAh = { as: 'meter-mah', mAh: 11_000, volts: 5 } as const;
    await save(workbench, ...counted(55), { ...delivered, energy: mAh });
    const [one, other] = (await estimateOf(workbench, 'bank-delivery'))!.cells;
    expect(one!.low).toBeCloseTo(other!.low!, 9);
  });

  it('estimates what comes out of a bank per Wh taken in', async () => {
    const workbench = openedWorkbench();
    await save(workbench, ...counted(54, 55, 56), taken(69), taken(71));
    expect(await estimateOf(workbench, 'bank-efficiency')).toMatchObject({ missing: 1, estimate: null });
    await save(workbench, taken(70));
    const { estimate } = (await estimateOf(workbench, 'bank-efficiency'))!;
    expect(estimate!.value).toBeCloseTo(55 / 70, 2);
    expect(estimate!.low).toBeLessThan(estimate!.value);
  });

  it('keeps the uses of a device apart by what it was doing', async () => {
    const workbench = openedWorkbench();
    const riding = [0.52, 0.5, 0.48].map((afterShare): Asked => ({ ...used, afterShare }));
    await save(workbench, ...riding, { ...used, during: 'evening' });
    expect((await estimateOf(workbench, 'device-riding'))!.missing).toBe(0);
    expect((await estimateOf(workbench, 'device-evening'))!.missing).toBe(2);
  });
});

describe('readings.store', () => {
  it('refuses with too few readings, and leaves the item as it was', async () => {
    const workbench = openedWorkbench();
    await save(workbench, ...counted(54));
    const before = await workbench.value('items.list', {});
    const outcome = await workbench.call('readings.store', { itemId: bankId, measure: 'bank-delivery' });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'not-found' } });
    expect(await workbench.value('items.list', {})).toEqual(before);
  });

  it('makes it the measured value, and keeps the date and the number of readings', async () => {
    const workbench = openedWorkbench();
    await save(workbench, ...counted(54, 55, 56));
    const { item, before } = await workbench.value('readings.store', {
      itemId: bankId,
      measure: 'bank-delivery',
    });
    expect(item).toEqual({ ...before, measuredDeliverableWh: { value: 55, on: today } });
    expect((await estimateOf(workbench, 'bank-delivery'))!.offer).toEqual({
      as: 'stored',
      field: 'Measured delivery',
      on: today,
      readings: 3,
    });
  });

  it('offers it again once there are more readings', async () => {
    const workbench = openedWorkbench();
    await save(workbench, ...counted(54, 55, 56));
    await workbench.value('readings.store', { itemId: bankId, measure: 'bank-delivery' });
    await save(workbench, ...counted(50));
    const { offer } = (await estimateOf(workbench, 'bank-delivery'))!;
    expect(offer.as).toBe('open');
    expect(offer.as === 'open' && offer.now).toContain('from 3 readings');
  });

  it('puts a use while riding where the plan has it', async () => {
    const workbench = openedWorkbench();
    await save(workbench, ...[0.52, 0.5, 0.48].map((afterShare): Asked => ({ ...used, afterShare })));
    const { estimate } = (await estimateOf(workbench, 'device-riding'))!;
    const { item } = await workbench.value('readings.store', {
      itemId: 'demo-phone',
      measure: 'device-riding',
    });
    expect(item.kind === 'device' && item.use.as === 'activity' && item.use.ridingW).toBeCloseTo(
      estimate!.value,
      2,
    );
  });

  it('says the number of readings, and what the value was before', async () => {
    const workbench = openedWorkbench();
    await save(workbench, ...counted(54, 55, 56));
    const { words } = await workbench.value('readings.store', { itemId: bankId, measure: 'bank-delivery' });
    expect(words).toMatch(
      /^Measured delivery: 55 Wh, measured on .*, from 3 readings, .* to .* Wh; before: 60 Wh, measured on 14 March 2026$/,
    );
  });

  it('lets the next comparison say that it used the readings, and how many they were', patience, async () => {
    const workbench = openedWorkbench();
    await save(
      workbench,
      ...counted(54, 55, 56),
      ...[0.52, 0.5, 0.48].map((afterShare): Asked => ({ ...used, afterShare })),
    );
    await workbench.value('readings.store', { itemId: bankId, measure: 'bank-delivery' });
    await workbench.value('readings.store', { itemId: 'demo-phone', measure: 'device-riding' });
    const { scenarios, assumptions } = await workbench.value('comparison.run', {
      ...{ runId: 'run', tourId: 'demo-tour', scenarioIds: ['demo-banks'] },
    });
    const sources = [...scenarios[0]!.assumptions, ...assumptions].filter(({ source }) =>
      source.includes('from 3 readings'),
    );
    expect(sources.map(({ basis }) => basis)).toEqual(['measured', 'measured']);
  });
});

describe('readings of a hub', () => {
  const hubId = 'demo-hub-3';
  const ridden = (distanceKm: number | null, ...wh: readonly number[]): readonly Asked[] =>
    wh.map((each) => ({
      ...{ as: 'ride', itemId: hubId, on: today, note: '' },
      ...{ energy: { as: 'meter-wh', wh: each }, hours: 4, distanceKm },
    }));

  it('offer no yield without a distance, and say what is wanted', async () => {
    const workbench = openedWorkbench();
    await save(workbench, ...ridden(null, 7, 7.4, 7.8));
    const power = (await estimateOf(workbench, 'hub-power'))!;
    expect(power.missing).toBe(0);
    expect(power.catalogue!.words).toContain('at 15 km/h');
    expect(power.offer.as === 'none' && power.offer.why).toContain('distance');
    expect(await estimateOf(workbench, 'hub-yield')).toBeUndefined();
    expect(await workbench.call('readings.store', { itemId: hubId, measure: 'hub-power' })).toMatchObject({
      ok: false,
      error: { code: 'not-found' },
    });
  });

  it('make its yield, of all that its rating promises, which is then stored', async () => {
    const workbench = openedWorkbench();
    await save(workbench, ...ridden(72, 7, 7.4, 7.8));
    const found = (await estimateOf(workbench, 'hub-yield'))!;
    expect(found).toMatchObject({
      unit: 'share',
      readings: 3,
      catalogue: { value: 1 },
      offer: { as: 'open' },
    });
    const { item, before, words } = await workbench.value('readings.store', {
      itemId: hubId,
      measure: 'hub-yield',
    });
    const value = Number(found.estimate!.value.toPrecision(3));
    expect(item).toEqual({ ...before, measuredYield: { value, on: today } });
    expect(words).toContain('from 3 readings');
    expect((await estimateOf(workbench, 'hub-yield'))!.offer).toMatchObject({ as: 'stored', readings: 3 });
  });

  it('cannot make it yield what no hub does', async () => {
    const workbench = openedWorkbench();
    await save(workbench, ...ridden(72, 70, 74, 78));
    const { offer } = (await estimateOf(workbench, 'hub-yield'))!;
    expect(offer.as === 'none' && offer.why).toContain('check the readings');
  });
});

describe('readings of a panel', () => {
  it('put back on what the heat of the sun took, for the comparison takes it off again', async () => {
    const workbench = openedWorkbench();
    const sunny = [28, 28.2, 27.8].map((wh): Asked => ({
      ...{ as: 'sun', itemId: 'demo-panel-20', on: today, note: '' },
      ...{ energy: { as: 'meter-wh', wh }, hours: 2 },
    }));
    await save(workbench, ...sunny);
    const { estimate } = (await estimateOf(workbench, 'panel-power'))!;
    // 14 W at 20 + (48 - 20) / 800 x 1000 = 55 degC, 30 K above 25: 0.4 % a kelvin leave 88 %.
    expect(estimate!.value).toBeCloseTo(14 / 0.88, 1);
  });
});

describe('items.remove', () => {
  it('keeps an item that has readings, and says why', async () => {
    const workbench = openedWorkbench();
    const { id: _id, ...draft } = (await workbench.value('items.list', {})).find(({ id }) => id === bankId)!;
    const { id } = await workbench.value('items.save', { item: draft });
    await save(workbench, { ...delivered, itemId: id });
    const outcome = await workbench.call('items.remove', { ids: [id] });
    expect(outcome).toMatchObject({ ok: false, error: { code: 'in-use' } });
    expect(outcome.ok ? '' : outcome.error.message).toContain('field log');
  });
});
