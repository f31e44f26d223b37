import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../../db/demo/demo.ts';
import type { Item, ItemOf } from '../../../../shared-types/item.ts';
import type { ReadingOf } from '../../../../shared-types/reading.ts';
import { generatorWheel } from '../../../../src-main/model/ride/hub.ts';
import { plugConverter, yieldMeasured } from '../../../../src-main/workbench/field-log/hub-yield.ts';
import { expectNear } from '../../../support/near.ts';

const rated = demoItems.find((item): item is ItemOf<'generator-hub'> => item.kind === 'generator-hub')!;
/** Read at the plug, so that no converter comes between. */
const curved: ItemOf<'generator-hub'> = {
  ...rated,
  power: {
    as: 'curve',
    readAt: 'plug',
    points: [
      { speedKmh: 8, powerW: 1 },
      { speedKmh: 20, powerW: 3 },
    ],
  },
};
const converter = plugConverter([]);

const ride = (wh: number, hours: number, distanceKm: number | null): ReadingOf<'ride'> => ({
  ...{ as: 'ride', id: 'one', itemId: rated.id, on: '2027-05-03', note: '' },
  ...{ energy: { as: 'meter-wh', wh }, hours, distanceKm },
});

const cellsOf = (hub: ItemOf<'generator-hub'>, ...rides: readonly ReadingOf<'ride'>[]) =>
  yieldMeasured(hub, rides, converter).cells.map(({ cell }) => cell);

describe('yieldMeasured()', () => {
  it('learns nothing from a ride without a distance', () => {
    expect(cellsOf(curved, ride(12, 5, null))).toEqual([]);
  });

  it('learns nothing from a ride below the start of the converter', () => {
    // 6 km/h, and a usual converter starts at 10.
    expect(cellsOf(rated, ride(0.1, 5, 30))).toEqual([]);
  });

  it('is what the meter counted over what the curve has at the mean speed, to the last digit of the meter', () => {
    // 20 km/h for 5 h: 15 Wh by the curve, 12 Wh counted, and a meter is right to half a per cent.
    const [cell] = cellsOf(curved, ride(12, 5, 100));
    expectNear(cell!.low, 0.8 * 0.995, 1e-12, 'low end of the yield');
    expectNear(cell!.high, 0.8 * 1.005, 1e-12, 'high end of the yield');
  });

  it('does not take off again what was measured before', () => {
    const stored = { ...curved, measuredYield: { value: 0.8, on: '2027-05-01' } };
    expect(cellsOf(stored, ride(12, 5, 100))).toEqual(cellsOf(curved, ride(12, 5, 100)));
  });

  it('comes out low, as its basis says, where the speed changed', () => {
    const { plugW } = generatorWheel(rated, converter.model);
    // An hour at 12 and an hour at 24 km/h, with all that the hub promises at each.
    const [cell] = cellsOf(rated, ride(plugW(12) + plugW(24), 2, 36));
    expect(cell!.high).toBeLessThan(1);
    expect(cell!.low).toBeGreaterThan(0.9);
  });

  it('comes out low where part of the ride lay below the start', () => {
    const { plugW } = generatorWheel(rated, converter.model);
    // An hour at 8 km/h gives nothing; with two at 14 km/h the mean is 12, above a start of 10.
    const [cell] = cellsOf(rated, ride(2 * plugW(14), 3, 36));
    expect(cell!.high).toBeLessThan(1);
  });

  it('hardly minds changing speeds through a tracking converter', () => {
    // An outlet that does not cut it off at the faster of the two.
    const model: typeof converter.model = { ...converter.model, load: 'tracking', outputW: 20 };
    const tracking = { ...converter, model };
    const { plugW } = generatorWheel(rated, tracking.model);
    const [read] = yieldMeasured(rated, [ride(plugW(12) + plugW(24), 2, 36)], tracking).cells;
    // Within the half per cent of the meter.
    expect(read!.cell.low).toBeLessThan(1);
    expect(read!.cell.high).toBeGreaterThan(1);
  });

  it('comes out high only on a curve that bends up', () => {
    const points = [
      { speedKmh: 10, powerW: 0.5 },
      { speedKmh: 15, powerW: 1 },
      { speedKmh: 20, powerW: 4 },
    ];
    const bent: ItemOf<'generator-hub'> = { ...curved, power: { as: 'curve', readAt: 'plug', points } };
    // An hour at 10 and an hour at 20 km/h: 4.5 Wh, where 15 km/h promises 2 Wh.
    expect(cellsOf(bent, ride(4.5, 2, 30))[0]!.low).toBeGreaterThan(1);
  });
});

describe('plugConverter()', () => {
  const own = demoItems.find(({ kind }) => kind === 'converter')!;

  it('is the rider’s own where there is one, and says so', () => {
    const owned: Item = { ...own, state: 'owned' };
    expect(plugConverter([rated, owned]).words).toBe(`your ${own.label}`);
  });

  it('is a usual one where the rider only considers one', () => {
    expect(plugConverter([rated, own]).words).toBe('a usual converter');
  });
});
