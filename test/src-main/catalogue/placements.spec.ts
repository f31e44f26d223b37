import { describe, expect, it } from 'vitest';
import { usualPlacement, type Placement } from '../../../shared-types/scenario.ts';
import { readPlacement, writePlacement } from '../../../src-main/catalogue/placements.ts';
import { removeScenario } from '../../../src-main/catalogue/scenarios.ts';
import { openedDemo } from './temporary-catalogue.ts';

const atLunch: Placement = {
  whileRiding: 'tilted',
  atStops: 'tilted',
  inCamp: 'packed',
  rackFactor: 0.55,
  rackTiltDeg: 20,
  restTiltDeg: 62.5,
  facingDeg: 215,
  onlyAtStops: ['Lunch stop', 'Bakery', 'Afternoon swim'],
  campFromH: 6,
  campToH: 19,
};

describe('readPlacement()', () => {
  it('throws for a scenario that is not there', () => {
    expect(() => readPlacement(openedDemo().read, 'gone')).toThrow(/misses a row.*gone/);
  });
});

describe('writePlacement()', () => {
  it('refuses hours in camp that are turned', () => {
    const { write } = openedDemo();
    const turned = { ...usualPlacement, campFromH: 20, campToH: 8 };
    expect(() => writePlacement(write, 'demo-panel', turned)).toThrow(/camp_hours_in_order/);
  });

  it('refuses a placement of no scenario', () => {
    expect(() => writePlacement(openedDemo().write, 'gone', usualPlacement)).toThrow(/FOREIGN KEY/);
  });

  it('is read again with its stops in order', () => {
    const { read, write } = openedDemo();
    writePlacement(write, 'demo-panel', atLunch);
    expect(readPlacement(read, 'demo-panel')).toEqual(atLunch);
  });

  it('forgets stops that are not named any more', () => {
    const { read, write } = openedDemo();
    writePlacement(write, 'demo-panel', atLunch);
    writePlacement(write, 'demo-panel', { ...atLunch, onlyAtStops: ['Bakery'] });
    expect(readPlacement(read, 'demo-panel').onlyAtStops).toEqual(['Bakery']);
  });

  it('leaves the placements of other scenarios alone', () => {
    const { read, write } = openedDemo();
    const before = readPlacement(read, 'demo-hub');
    writePlacement(write, 'demo-panel', atLunch);
    expect(readPlacement(read, 'demo-hub')).toEqual(before);
  });

  it('is gone, stops and all, with its scenario', () => {
    const { read, write } = openedDemo();
    writePlacement(write, 'demo-panel', atLunch);
    removeScenario(write, 'demo-panel');
    const left = ['scenario_placements', 'scenario_placement_stops'].map((table) =>
      read.prepare(`SELECT count(*) FROM ${table} WHERE scenario_id = 'demo-panel'`).pluck().get(),
    );
    expect(left).toEqual([0, 0]);
  });
});
