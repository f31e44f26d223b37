import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../db/demo/demo.ts';
import type { Item } from '../../../shared-types/item.ts';
import { drawComparedTour, type ComparedTour } from '../../../src-main/workbench/compared-tour.ts';
import type { ComparisonGround } from '../../../src-main/workbench/ground.ts';
import { demoGround, withHistories } from '../../support/demo-ground.ts';
import { expectNear } from '../../support/near.ts';

function drawn(changes: Partial<ComparisonGround> = {}): ComparedTour {
  const { tour, stations, items, settings } = demoGround(changes);
  const compared = drawComparedTour(tour, stations, items, settings);
  if ('unknownStationInLeg' in compared) throw new Error('The demo names stations that are there.');
  return compared;
}

/** By history: what multiplies the use of a device, a figure a day. */
function scalesOf({ devices, useScale }: ComparedTour, label: string): readonly (readonly number[])[] {
  const at = devices.findIndex((device) => device.label === label);
  return useScale.map((ofHistory) => [...ofHistory].filter((_, index) => index % devices.length === at));
}

const seeded = (seed: number): ComparisonGround['settings'] => {
  const { sky, ...settings } = withHistories(30);
  return { ...settings, sky: { ...sky, seed } };
};

const chances = (compared: ComparedTour): number[] => [...compared.timeline.luckChance];

describe('drawComparedTour()', () => {
  it('names the first leg whose station is not known', () => {
    const { tour, stations, items, settings } = demoGround();
    const [first, second, third] = tour.legs;
    const lost = { ...third!, place: { as: 'station', station: 'Nowhere' } as const };
    const legs = [first!, second!, lost];
    expect(drawComparedTour({ ...tour, legs }, stations, items, settings)).toEqual({
      unknownStationInLeg: 2,
    });
  });

  it('draws weather, luck and use of as many histories as asked for', () => {
    const { skies, outletIsFree, useScale } = drawn();
    expect([skies.histories, outletIsFree.length, useScale.length]).toEqual([30, 30, 30]);
  });

  it('draws the same from the same seed, and otherwise from another', () => {
    const [one, again, other] = [drawn(), drawn(), drawn({ settings: seeded(2) })];
    expect(again.useScale).toEqual(one.useScale);
    expect(again.outletIsFree).toEqual(one.outletIsFree);
    expect(other.useScale).not.toEqual(one.useScale);
    expect(other.outletIsFree).not.toEqual(one.outletIsFree);
  });

  it('leaves the first histories as they were when more are drawn', () => {
    const [few, more] = [drawn(), drawn({ settings: withHistories(50) })];
    expect(more.useScale.slice(0, 30)).toEqual(few.useScale);
    expect(more.outletIsFree.slice(0, 30)).toEqual(few.outletIsFree);
  });

  it('draws each device its own use, whatever else comes along and in whatever order', () => {
    const { tour } = demoGround();
    const all = drawn();
    const fewer = drawn({ tour: { ...tour, leftAtHome: ['demo-navigation'] } });
    expect(fewer.devices.map(({ label }) => label)).not.toContain('Navigation unit');
    const turned = drawn({ items: demoItems.toReversed() });
    for (const label of ['Phone', 'Camera', 'Reading tablet']) {
      expect(scalesOf(fewer, label)).toEqual(scalesOf(all, label));
      expect(scalesOf(turned, label)).toEqual(scalesOf(all, label));
    }
    expect(scalesOf(all, 'Phone')).not.toEqual(scalesOf(all, 'Camera'));
  });

  it('leaves use and luck as they were when the kit of the catalogue changes', () => {
    const bare: readonly Item[] = demoItems.filter(({ kind }) => kind === 'device');
    const [all, devicesOnly] = [drawn(), drawn({ items: bare })];
    expect(devicesOnly.useScale).toEqual(all.useScale);
    expect(devicesOnly.outletIsFree).toEqual(all.outletIsFree);
  });

  it('keeps the planned use in the mean, with the spread asked for', () => {
    const scales = scalesOf(drawn({ settings: withHistories(400) }), 'Phone').flat();
    const mean = scales.reduce((sum, scale) => sum + scale, 0) / scales.length;
    const variance = scales.reduce((sum, scale) => sum + (scale - mean) ** 2, 0) / scales.length;
    // 9,600 draws of deviation 0.25: the mean is known to 0.0026, the deviation to about 0.003; five times that.
    expectNear(mean, 1, 0.013, 'mean scale of a day’s use');
    expectNear(Math.sqrt(variance), 0.25, 0.015, 'its deviation');
    expect(Math.min(...scales)).toBeGreaterThan(0);
  });

  it('plans to the letter where no spread is wanted', () => {
    const settings = withHistories(20);
    const { useScale } = drawn({ settings: { ...settings, risk: { ...settings.risk, useSpread: 0 } } });
    expect(new Set(useScale.flatMap((scales) => [...scales]))).toEqual(new Set([1]));
  });

  it('finds an outlet free as often as its chance says, and never where there is none', () => {
    const compared = drawn({ settings: withHistories(400) });
    const seen = chances(compared).map(
      (_, stop) => compared.outletIsFree.reduce((sum, free) => sum + free[stop]!, 0) / 400,
    );
    const lunches = seen.filter((_, stop) => chances(compared)[stop] === 0.5);
    expect(lunches).toHaveLength(6);
    // 400 draws of an even chance: the share is known to 0.025 each.
    for (const share of lunches) expectNear(share, 0.5, 0.125, 'share of days with a free outlet');
    expect(seen.filter((_, stop) => chances(compared)[stop] === 0).every((share) => share === 0)).toBe(true);
  });
});
