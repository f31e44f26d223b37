import { describe, expect, it } from 'vitest';
import type { HubPower } from '../../../../shared-types/hub-item.ts';
import { usualItem } from '../../../../shared-types/usual-item.ts';
import {
  hubPowerColumns,
  readHubPower,
  writeCurvePoints,
} from '../../../../src-main/catalogue/item-kinds/hub-power.ts';
import { findItem, saveItem } from '../../../../src-main/catalogue/items.ts';
import { openedDemo } from '../temporary-catalogue.ts';

const curve: Extract<HubPower, { as: 'curve' }> = {
  as: 'curve',
  readAt: 'plug',
  points: [
    { speedKmh: 8, powerW: 0 },
    { speedKmh: 14.5, powerW: 1.9 },
    { speedKmh: 30, powerW: 3.25 },
  ],
};

const hub = (power: HubPower) => ({ ...usualItem('generator-hub', 'EUR'), label: 'Hub', power });

describe('writeCurvePoints()', () => {
  it('refuses the points of an item that is no hub', () => {
    expect(() => writeCurvePoints(openedDemo().write, 'demo-phone', curve)).toThrow(/FOREIGN KEY/);
  });

  it('refuses two powers at one speed', () => {
    const twice = { ...curve, points: [curve.points[0]!, curve.points[0]!] };
    expect(() => writeCurvePoints(openedDemo().write, 'demo-hub-3', twice)).toThrow(/UNIQUE/);
  });

  it('writes nothing for a rating', () => {
    const { read, write } = openedDemo();
    writeCurvePoints(write, 'demo-hub-3', { as: 'rating', ratedW: 3 });
    expect(read.prepare('SELECT count(*) FROM hub_curve_points').pluck().get()).toBe(0);
  });
});

describe('readHubPower()', () => {
  it('takes a rating from its row, whatever points there are', () => {
    const { read, write } = openedDemo();
    writeCurvePoints(write, 'demo-hub-3', curve);
    const row = hubPowerColumns({ as: 'rating', ratedW: 2.4 });
    expect(readHubPower(read, 'demo-hub-3', row)).toEqual({ as: 'rating', ratedW: 2.4 });
  });

  it('takes the points of a curve in their order', () => {
    const { read, write } = openedDemo();
    writeCurvePoints(write, 'demo-hub-3', curve);
    expect(readHubPower(read, 'demo-hub-3', hubPowerColumns(curve))).toEqual(curve);
  });
});

describe('a hub', () => {
  it.each(['hub', 'plug'] as const)('remembers that its curve was read at the %s', (readAt) => {
    const { read, write } = openedDemo();
    saveItem(write, hub({ ...curve, readAt }), 'measured');
    expect(findItem(read, 'measured')).toMatchObject({ power: { ...curve, readAt } });
  });

  it('turns from a curve to a rating and leaves no point', () => {
    const { read, write } = openedDemo();
    saveItem(write, hub(curve), 'measured');
    saveItem(write, hub({ as: 'rating', ratedW: 1.5 }), 'measured');
    expect(findItem(read, 'measured')).toMatchObject({ power: { as: 'rating', ratedW: 1.5 } });
    expect(read.prepare('SELECT count(*) FROM hub_curve_points').pluck().get()).toBe(0);
  });
});
