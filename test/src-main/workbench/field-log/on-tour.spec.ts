import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios, demoSettings, demoTours } from '../../../../db/demo/demo.ts';
import type { OnTour, OnTourQuestion } from '../../../../shared-types/field-log.ts';
import type { Reading } from '../../../../shared-types/reading.ts';
import type { Scenario } from '../../../../shared-types/scenario.ts';
import { readStations } from '../../../../src-main/catalogue/stations.ts';
import { longestSunshineH } from '../../../../src-main/workbench/longest-sunshine.ts';
import { onTour, type OnTourSources } from '../../../../src-main/workbench/field-log/on-tour.ts';

const tour = demoTours[0]!;
const today = '2030-01-01';
const banksOnly = demoScenarios.find(({ id }) => id === 'demo-banks')!;
const stations = readStations(longestSunshineH);
const settings = { ...demoSettings, sky: { ...demoSettings.sky, histories: 20 } };

function charge(itemId: string, share: number, on = today): Reading {
  return { id: `${itemId}-${share}`, as: 'charge', itemId, on, note: '', state: { as: 'share', share } };
}

const storeIds = [
  ...demoItems.filter(({ kind }) => kind === 'device').map(({ id }) => id),
  ...banksOnly.kit.map(({ itemId }) => itemId),
];
const allAt = (share: number): readonly Reading[] =>
  storeIds
    .filter((id) => demoItems.some((item) => item.id === id && ['device', 'bank'].includes(item.kind)))
    .map((id) => charge(id, share));

function sources(readings: readonly Reading[], change: Partial<OnTourSources> = {}): OnTourSources {
  return {
    ground: { tour, stations, items: demoItems, settings },
    scenario: banksOnly,
    readings,
    today,
    hour: 12,
    ...change,
  };
}

function asked(day: number | null, scenario: Scenario = banksOnly): OnTourQuestion {
  return { tourId: tour.id, scenarioId: scenario.id, day };
}

function answer(
  readings: readonly Reading[],
  day: number | null = 3,
  change: Partial<OnTourSources> = {},
): OnTour {
  const outcome = onTour(asked(day), sources(readings, change));
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
}

describe('how long must-haves last on tour', () => {
  it('refuses a day that the tour does not have', () => {
    const outcome = onTour(asked(300), sources(allAt(0.5)));
    expect(outcome).toMatchObject({ ok: false, error: { code: 'bad-input', fields: [{ path: 'day' }] } });
  });

  it('says when today is no day of the tour, and takes its first', () => {
    const { day, assumed } = answer(allAt(0.5), null);
    expect(day).toBe(1);
    expect(assumed.join(' ')).toContain('not a day of this tour');
  });

  it('finds the day by its date', () => {
    const { day, assumed } = answer(allAt(0.5), null, { today: tour.startDate });
    expect(day).toBe(1);
    expect(assumed.join(' ')).toContain('By its date today is day 1');
  });

  it('is nothing with everything empty, and what is empty is not switched off to any avail', () => {
    const { low, usual, switchOff } = answer(allAt(0));
    expect([low.days, usual.days < 0.5]).toEqual([expect.closeTo(0, 0), true]);
    expect(switchOff.every(({ days }) => days > 0)).toBe(true);
  });

  it('is longer with more stored', () => {
    const [little, much] = [answer(allAt(0.2)), answer(allAt(0.8))];
    expect(much.usual.days).toBeGreaterThan(little.usual.days);
    expect(little.flatFirst).not.toBeNull();
  });

  it('puts low below usual below good', () => {
    const lights = { as: 'lights', lit: 2 } as const;
    const readings = allAt(0.3).map((reading): Reading =>
      reading.itemId.startsWith('demo-bank') && reading.as === 'charge'
        ? { ...reading, state: lights }
        : reading,
    );
    const { low, usual, good } = answer(readings);
    expect(low.days).toBeLessThan(usual.days);
    expect(usual.days).toBeLessThan(good.days);
  });

  it('takes what has no reading today as empty to full, and says so', () => {
    const { stores, assumed } = answer(allAt(0.5).slice(1));
    const unread = stores.find(({ isRead }) => !isRead)!;
    expect([unread.lowWh, unread.highWh]).toEqual([0, unread.capacityWh]);
    expect(assumed.join(' ')).toContain(unread.label);
  });

  it('does not take yesterday for today', () => {
    const yesterday = allAt(0.5).map((reading) => ({ ...reading, on: '2029-12-31' }));
    expect(answer(yesterday).stores.some(({ isRead }) => isRead)).toBe(false);
  });

  it('takes the last reading of the day, whatever its form', () => {
    const drained: Reading = {
      id: 'drained',
      as: 'use',
      itemId: 'demo-phone',
      on: today,
      note: '',
      beforeShare: 0.5,
      afterShare: 0.1,
      hours: 2,
      during: 'riding',
    };
    const phone = answer([drained, ...allAt(0.5)]).stores.find(({ itemId }) => itemId === 'demo-phone')!;
    expect(phone.usualWh).toBeCloseTo(0.1 * phone.capacityWh, 9);
  });

  it('names what to switch off, the nice-to-have first, each with the days it buys', () => {
    const { switchOff, usual } = answer(allAt(0.4));
    expect(usual.toTheEnd).toBe(false);
    expect(switchOff.length).toBeGreaterThan(0);
    expect(switchOff.map(({ role }) => role)).toEqual(
      switchOff.map(({ role }) => role).toSorted((a, b) => (a === b ? 0 : a === 'nice-to-have' ? -1 : 1)),
    );
  });

  it('counts on no wall: without the charger it says the same', () => {
    const bare = { ...banksOnly, kit: banksOnly.kit.filter(({ itemId }) => !isCharger(itemId)) };
    const { low, usual, good } = answer(allAt(0.5));
    expect(answer(allAt(0.5), 3, { scenario: bare })).toMatchObject({ low, usual, good });
  });

  it('says when the next wall is, and does not take the one of now for it', () => {
    const [noon, atHome] = [12, 3].map((hour) => answer(allAt(0.5), 1, { hour }).wall!);
    expect(noon!.inDays).toBeGreaterThan(0.2);
    expect(atHome!.inDays - noon!.inDays).toBeCloseTo((12 - 3) / 24, 6);
    expect(atHome!.day).toBe(noon!.day);
  });

  it('says when readings of a device tell of another use than the plan', () => {
    const used = ([0.3, 0.32, 0.31] as const).map((afterShare, at): Reading => ({
      ...{ id: `use-${at}`, as: 'use', itemId: 'demo-phone', on: '2029-12-20', note: '' },
      ...{ beforeShare: 0.9, afterShare, hours: 3, during: 'riding' },
    }));
    expect(answer([...used, ...allAt(0.5)]).assumed.join(' ')).toContain('Readings say otherwise of Phone');
    expect(answer(allAt(0.5)).assumed.join(' ')).not.toContain('say otherwise');
  });
});

function isCharger(itemId: string): boolean {
  return demoItems.find(({ id }) => id === itemId)?.kind === 'wall-charger';
}
