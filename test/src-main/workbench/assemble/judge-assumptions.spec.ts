import { describe, expect, it } from 'vitest';
import { demoItems, demoSettings } from '../../../../db/demo/demo.ts';
import type { Settings } from '../../../../shared-types/settings.ts';
import {
  judgeAssumptions,
  lifeAssumptions,
} from '../../../../src-main/workbench/assemble/judge-assumptions.ts';

function told(change: Partial<Settings> = {}) {
  return judgeAssumptions({ ...demoSettings, ...change }).map(({ value, basis }) => [value, basis]);
}

describe('the figures that cost and front load rest on', () => {
  it('are usual values until the rider changes them', () => {
    expect(told().map(([, basis]) => basis)).toEqual(['default', 'default', 'default']);
    expect(told()[0]![0]).toBe('0 % interest a year, 30 touring days a year; equivalent annual cost');
    // Of a load on the rear rack, 0.05 m ahead of its axle, 1.08 m of wheelbase carry 4.6 % in front.
    expect(told()[2]![0]).toMatch(/in the front wheel 100.%.*rear rack 5.%/u);
  });

  it('are the rider’s once changed', () => {
    const money = { ratePct: 3, touringDaysAYear: 60, wallNight: { minor: 1500, currency: 'EUR' } };
    const frontLoad = {
      ...demoSettings.frontLoad,
      ownShare: { ...demoSettings.frontLoad.ownShare, frame: 0.4 },
    };
    const [cost, night, wheel] = told({ money, frontLoad });
    expect([cost, night, wheel].map((each) => each![1])).toEqual(['rider', 'rider', 'rider']);
    expect(night![0]).toMatch(/^costs 15.EUR more/u);
    expect(wheel![0]).toMatch(/frame 40.%/u);
  });

  it('name the usual years of the kinds whose items say none, once each', () => {
    const lines = demoItems
      .filter(({ kind }) => kind === 'bank' || kind === 'panel')
      .map((item) => ({ item, carried: 1 }));
    expect(lifeAssumptions(lines).map(({ value }) => value)).toEqual([
      'bank 5, panel 8 years, where an item says none',
    ]);
    const known = lines.map(({ item, carried }) => ({ item: { ...item, lifeYears: 4 }, carried }));
    expect(lifeAssumptions(known)).toEqual([]);
  });
});
