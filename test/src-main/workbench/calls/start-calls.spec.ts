import { describe, expect, it } from 'vitest';
import { demoItems, demoTours } from '../../../../db/demo/demo.ts';
import type { ItemDraft } from '../../../../shared-types/item.ts';
import type { OwnStart } from '../../../../shared-types/own-start.ts';
import { usualItem } from '../../../../shared-types/usual-item.ts';
import { openedWorkbench, type TestWorkbench } from '../../../support/open-workbench.ts';

const labelled = (label: string, item: ItemDraft): ItemDraft => ({ ...item, label });

function ownStart(change: Partial<OwnStart> = {}): OwnStart {
  const { id: _, ...tour } = demoTours[0]!;
  return {
    items: [
      labelled('My phone', usualItem('device', 'EUR')),
      labelled('My bank', usualItem('bank', 'EUR')),
      labelled('My charger', usualItem('wall-charger', 'EUR')),
    ],
    tour: { ...tour, label: 'My tour' },
    putDemoAway: true,
    ...change,
  };
}

async function inUse({ value }: TestWorkbench): Promise<readonly string[]> {
  const items = await value('items.list', {});
  return items.filter(({ state }) => state !== 'retired').map(({ label }) => label);
}

describe('start.own', () => {
  it('lays items, tour and methods, puts the demo away, and compares the new tour', async () => {
    const workbench = openedWorkbench();
    const { tourId } = await workbench.value('start.own', { own: ownStart() });
    expect(await inUse(workbench)).toEqual(['My bank', 'My charger', 'My phone']);
    expect((await workbench.value('tours.list', {})).map(({ label }) => label)).toEqual(['My tour']);
    const scenarios = await workbench.value('scenarios.list', {});
    expect(scenarios.map(({ label }) => label)).toEqual(['Banks only']);
    expect((await workbench.value('settings.get', {})).tourId).toBe(tourId);
    const run = { runId: 'spec', tourId, scenarioIds: null };
    expect((await workbench.value('comparison.run', run)).scenarios).toHaveLength(1);
  });

  it('leaves the demo where it is when the rider wants it beside', async () => {
    const workbench = openedWorkbench();
    await workbench.value('start.own', { own: ownStart({ putDemoAway: false }) });
    expect(await workbench.value('tours.list', {})).toHaveLength(2);
    expect(await inUse(workbench)).toHaveLength(demoItems.length + 3);
  });

  it('refuses a tour at a station that is not there, at its field, and lays nothing', async () => {
    const workbench = openedWorkbench();
    const own = ownStart();
    const place = { as: 'station', station: 'Nowhere' } as const;
    const tour = { ...own.tour, legs: own.tour.legs.map((leg) => ({ ...leg, place })) };
    const before = await workbench.value('items.list', {});
    expect(await workbench.call('start.own', { own: { ...own, tour } })).toMatchObject({
      ok: false,
      error: { code: 'bad-input', fields: [{ path: 'own.tour.legs.0.place.station' }, {}, {}] },
    });
    expect(await workbench.value('items.list', {})).toEqual(before);
    expect(await workbench.value('tours.list', {})).toHaveLength(1);
  });

  it('asks for a device at least', async () => {
    const { call } = openedWorkbench();
    expect(await call('start.own', { own: ownStart({ items: [] }) })).toMatchObject({
      ok: false,
      error: { fields: [{ path: 'own.items', allowed: 'at least one device' }] },
    });
  });
});

describe('start.demo', () => {
  it('puts the demo back as it was invented, beside what is the rider’s own', async () => {
    const workbench = openedWorkbench();
    await workbench.value('start.own', { own: ownStart() });
    await workbench.value('start.demo', {});
    expect(await workbench.value('tours.list', {})).toHaveLength(2);
    expect(await workbench.value('scenarios.list', {})).toHaveLength(4);
    expect(await inUse(workbench)).toHaveLength(demoItems.length + 3);
    expect((await workbench.value('settings.get', {})).tourId).toBe('demo-tour');
  });
});

describe('scenarios.addReadyMade', () => {
  it('adds the methods that no scenario is named as, once', async () => {
    const { value } = openedWorkbench();
    expect((await value('scenarios.addReadyMade', {})).added).toEqual([]);
    await value('scenarios.remove', { id: 'demo-hub' });
    expect((await value('scenarios.addReadyMade', {})).added).toHaveLength(1);
    const labels = (await value('scenarios.list', {})).map(({ label }) => label);
    expect(labels.toSorted()).toEqual(['Banks only', 'Generator hub', 'Panel + buffer bank']);
  });
});
