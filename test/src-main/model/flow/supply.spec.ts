import { describe, expect, it } from 'vitest';
import { meanHistory } from '../../../../src-main/model/flow/history.ts';
import { buildSupply, type PanelPlacement } from '../../../../src-main/model/flow/supply.ts';
import { buildTimeline } from '../../../../src-main/model/flow/timeline.ts';
import { noonOf } from '../../../../src-main/model/sun/calendar.ts';
import { monthlyDiffuseShare } from '../../../../src-main/model/sun/daily-radiation.ts';
import { lightOfDay, type PlaceClimate } from '../../../../src-main/model/sun/day-light.ts';
import { expectNear } from '../../../support/near.ts';

const timeline = buildTimeline(
  [
    {
      days: 1,
      ridingHours: 6,
      stops: [{ hours: 1, outlets: 1, chance: 0.4 }],
      nightPattern: ['none'],
      wallOutlets: 1,
      postOutlets: 1,
    },
  ],
  60,
);
const panel = {
  ratedW: 20,
  temperatureCoefficientPerK: -0.004,
  noctDegC: 45,
  regulatorEfficiency: 0.85,
  startWm2: 0,
  outputW: 100,
};
const flat: PanelPlacement = { whileRiding: 'flat', atStops: 'aimed', inCamp: 'packed', rackFactor: 0.5 };
const lightAt = (latDeg: number, date: string) => {
  const months = (value: number): number[] => new Array<number>(12).fill(value);
  const climate: PlaceClimate = { latDeg, clearness: months(0.6), minDegC: months(10), maxDegC: months(20) };
  return [lightOfDay(climate, noonOf(date), 0.6, monthlyDiffuseShare, 24)];
};
const supply = (placement: PanelPlacement, latDeg = 45, date = '2027-06-10', panels = [panel]) =>
  buildSupply(
    timeline,
    meanHistory(timeline, () => 0.6),
    lightAt(latDeg, date),
    panels,
    placement,
    [3],
  );
const wh = (watts: Float64Array): number => watts.reduce((sum, each) => sum + each, 0);

describe('buildSupply()', () => {
  it('gives nothing from a panel packed away or left at home', () => {
    const packed = { whileRiding: 'packed', atStops: 'packed', inCamp: 'packed', rackFactor: 1 } as const;
    expect(wh(supply(packed).panelW)).toBe(0);
    expect(wh(supply(flat, 45, '2027-06-10', []).panelW)).toBe(0);
  });

  it('gives hub power on the ride only', () => {
    expectNear(wh(supply(flat).hubW), 18, 1e-9, 'hub, Wh');
  });

  it('takes a doubtful outlet for its share and a night’s wall for certain', () => {
    const { outletShare } = supply(flat);
    expect(outletShare[11]).toBe(0.4);
    expect(outletShare[5]).toBe(1);
  });

  it('gives two panels what one gives twice', () => {
    expectNear(
      wh(supply(flat, 45, '2027-06-10', [panel, panel]).panelW),
      2 * wh(supply(flat).panelW),
      1e-9,
      'Wh',
    );
  });

  it('gives a panel flat on the rack about a third of an aimed one under a low sun', () => {
    // Common practice, no source. Conditions: 45 N at the equinox, clearness 0.6, rack factor 0.6.
    const allDay = (aim: 'flat' | 'aimed', rackFactor: number): number => {
      const light = lightAt(45, '2027-03-20')[0]!;
      return light.panelWm2[aim].reduce((sum, watts) => sum + watts * rackFactor, 0);
    };
    expectNear(allDay('flat', 0.6) / allDay('aimed', 1), 1 / 3, 0.1, 'flat over aimed');
  });

  it('falls behind where the sun is low', () => {
    // Common practice, no source: under half of what it gives in summer further south.
    expect(wh(supply(flat, 62, '2027-11-10').panelW)).toBeLessThan(
      0.5 * wh(supply(flat, 40, '2027-06-10').panelW),
    );
  });
});
