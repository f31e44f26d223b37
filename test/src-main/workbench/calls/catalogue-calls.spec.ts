import { describe, expect, it } from 'vitest';
import type { ItemDraft } from '../../../../shared-types/item.ts';
import type { TourDraft } from '../../../../shared-types/tour.ts';
import { demoItems, demoTours } from '../../../../db/demo/demo.ts';
import { openedWorkbench, type TestWorkbench } from '../../../support/open-workbench.ts';

const withoutId = <T extends { readonly id: string }>({ id: _, ...draft }: T): Omit<T, 'id'> => draft;
const phone = withoutId(demoItems.find((item) => item.kind === 'device')!) as ItemDraft & { kind: 'device' };
const tour: TourDraft = withoutId(demoTours[0]!);

/** Everything stored, so that a test can show that a refused call left all as it was. */
async function everything(workbench: TestWorkbench): Promise<unknown> {
  return [
    await workbench.value('items.list', {}),
    await workbench.value('tours.list', {}),
    await workbench.value('scenarios.list', {}),
    await workbench.value('settings.get', {}),
  ];
}

describe('bad input to the catalogue', () => {
  const leg = tour.legs[0]!;
  const cases: {
    what: string;
    name: 'items.save' | 'tours.save';
    input: object;
    path: string;
    allowed: RegExp;
  }[] = [
    {
      what: 'a negative mass',
      name: 'items.save',
      input: { item: { ...phone, massG: -5 } },
      path: 'item.massG',
      allowed: /0 to 20,000 g/,
    },
    {
      what: '0 V cells',
      name: 'items.save',
      input: { item: { ...phone, capacity: { as: 'mah', mAh: 4500, cellV: 0 } } },
      path: 'item.capacity.cellV',
      allowed: /1 to 60 V/,
    },
    {
      what: 'a 400 Ah phone',
      name: 'items.save',
      input: { item: { ...phone, capacity: { as: 'mah', mAh: 400_000, cellV: 3.85 } } },
      path: 'item.capacity.mAh',
      allowed: /0 to 60,000 mAh/,
    },
    {
      what: 'an empty label',
      name: 'items.save',
      input: { item: { ...phone, label: '   ' } },
      path: 'item.label',
      allowed: /1 to 80 characters/,
    },
    {
      what: 'a kind that is none',
      name: 'items.save',
      input: { item: { ...phone, kind: 'toaster' } },
      path: 'item.kind',
      allowed: /one of: device, bank/,
    },
    {
      what: 'a tour of 0 days',
      name: 'tours.save',
      input: { tour: { ...tour, legs: [{ ...leg, days: 0 }] } },
      path: 'tour.legs.0.days',
      allowed: /1 to 366/,
    },
    {
      what: 'a tour of 800 days',
      name: 'tours.save',
      input: { tour: { ...tour, legs: [{ ...leg, days: 400 }] } },
      path: 'tour.legs.0.days',
      allowed: /1 to 366/,
    },
    {
      what: 'legs that add up to 800 days',
      name: 'tours.save',
      input: { tour: { ...tour, legs: [300, 300, 200].map((days) => ({ ...leg, days })) } },
      path: 'tour.legs',
      allowed: /together 1 to 366 days/,
    },
    {
      what: 'latitude 95',
      name: 'tours.save',
      input: {
        tour: {
          ...tour,
          legs: [{ ...leg, place: { as: 'coordinates', latDeg: 95, lonDeg: 7, elevationM: 0 } }],
        },
      },
      path: 'tour.legs.0.place.latDeg',
      allowed: /−90 to 90/,
    },
    {
      what: 'a pattern with no nights',
      name: 'tours.save',
      input: { tour: { ...tour, legs: [{ ...leg, nights: { ...leg.nights, kinds: [] } }] } },
      path: 'tour.legs.0.nights.kinds',
      allowed: /1 to 366 nights/,
    },
    {
      what: 'a station that is not in the list',
      name: 'tours.save',
      input: { tour: { ...tour, legs: [{ ...leg, place: { as: 'station', station: 'Nowhere' } }] } },
      path: 'tour.legs.0.place.station',
      allowed: /climate station/,
    },
    {
      what: 'riding and stops longer than the day',
      name: 'tours.save',
      input: {
        tour: {
          ...tour,
          legs: [
            { ...leg, ridingHours: 12, dayStops: [{ label: 'Long', minutes: 300, outlets: 1, chance: 1 }] },
          ],
        },
      },
      path: 'tour.legs.0.dayStops',
      allowed: /fit into 14 h/,
    },
  ];

  it.each(cases)(
    'refuses $what, names the field and what is allowed',
    async ({ name, input, path, allowed }) => {
      const workbench = openedWorkbench();
      const before = await everything(workbench);
      const outcome = await workbench.call(name, input as never);
      expect(outcome).toMatchObject({ ok: false, error: { code: 'bad-input' } });
      const field = outcome.ok ? undefined : outcome.error.fields.find((each) => each.path === path);
      expect(field?.allowed).toMatch(allowed);
      expect(await everything(workbench)).toEqual(before);
      expect(workbench.faults).toEqual([]);
    },
  );

  it('refuses a CSV that is not one', async () => {
    const workbench = openedWorkbench();
    const before = await everything(workbench);
    const text = '<html>no table</html>';
    const csv = await workbench.value('items.addCsv', { text, leaveOut: [], passOverErrors: true });
    expect(csv.added).toEqual([]);
    expect(csv.problems[0]?.message).toBeTruthy();
    expect(await everything(workbench)).toEqual(before);
  });

  it('refuses to change or remove what is not there', async () => {
    const workbench = openedWorkbench();
    for (const outcome of [
      await workbench.call('items.setState', { id: 'gone', state: 'retired' }),
      await workbench.call('items.setStates', {
        changes: [
          { id: 'demo-phone', state: 'retired' },
          { id: 'gone', state: 'retired' },
        ],
      }),
      await workbench.call('tours.remove', { id: 'gone' }),
      await workbench.call('scenarios.remove', { id: 'gone' }),
    ]) {
      expect(outcome).toMatchObject({ ok: false, error: { code: 'not-found' } });
    }
  });
});

describe('the catalogue through its calls', () => {
  it('opens with the invented demo', async () => {
    const workbench = openedWorkbench();
    expect(await workbench.value('tours.list', {})).toMatchObject([{ id: 'demo-tour' }]);
    expect(await workbench.value('items.list', {})).toHaveLength(demoItems.length);
    expect(await workbench.value('scenarios.list', {})).toHaveLength(3);
  });

  it('adds, edits and retires an item', async () => {
    const { value } = openedWorkbench();
    const added = await value('items.save', { item: { ...phone, label: 'Second phone' } });
    const edited = await value('items.save', { id: added.id, item: { ...phone, label: 'Spare phone' } });
    expect(edited).toMatchObject({ id: added.id, label: 'Spare phone' });
    expect(await value('items.setState', { id: added.id, state: 'retired' })).toMatchObject({
      state: 'retired',
    });
  });

  it('puts a removed tour back under its id', async () => {
    const { value } = openedWorkbench();
    const removed = await value('tours.remove', { id: 'demo-tour' });
    expect(await value('tours.list', {})).toEqual([]);
    const { id, ...draft } = removed;
    expect(await value('tours.save', { id, tour: draft })).toEqual(removed);
  });

  it('moves several items at once', async () => {
    const { value } = openedWorkbench();
    const changes = [
      { id: 'demo-phone', state: 'retired' },
      { id: 'demo-camera', state: 'considering' },
    ] as const;
    expect(await value('items.setStates', { changes: [...changes] })).toMatchObject(changes);
    expect(await value('items.list', {})).toEqual(
      expect.arrayContaining(changes.map((change) => expect.objectContaining(change) as unknown)),
    );
  });
});
