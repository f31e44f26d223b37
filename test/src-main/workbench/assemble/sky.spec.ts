import { describe, expect, it } from 'vitest';
import { usualPlacement } from '../../../../shared-types/scenario.ts';
import { usualSky } from '../../../../shared-types/settings.ts';
import {
  allDayIn,
  panelDayOf,
  placementModel,
  skyLawOf,
} from '../../../../src-main/workbench/assemble/sky.ts';
import { legFixture } from '../../../support/station-fixture.ts';

describe('placementModel()', () => {
  it('packs away what is packed away', () => {
    const packed = placementModel({
      ...usualPlacement,
      whileRiding: 'packed',
      atStops: 'packed',
      inCamp: 'packed',
    });
    expect([packed.whileRiding, packed.atStops, packed.inCamp]).toEqual([null, null, null]);
  });

  it('takes one tilt at rest and another on the rack', () => {
    const tilted = placementModel({
      ...usualPlacement,
      whileRiding: 'tilted',
      atStops: 'tilted',
      rackTiltDeg: 20,
      restTiltDeg: 50,
      facingDeg: 200,
    });
    expect(tilted.whileRiding).toEqual({ as: 'any-heading', tiltDeg: 20 });
    expect(tilted.atStops).toEqual({ as: 'fixed', tiltDeg: 50, azimuthDeg: 200 });
    expect(tilted.inCamp).toEqual({ as: 'aimed' });
  });

  it('keeps stops, hours and shade as they are', () => {
    const { onlyAtStops, campFromH, campToH, rackFactor } = placementModel({
      ...usualPlacement,
      onlyAtStops: ['Lunch'],
      campFromH: 15,
      campToH: 19,
      rackFactor: 0.4,
    });
    expect({ onlyAtStops, campFromH, campToH, rackFactor }).toEqual({
      onlyAtStops: ['Lunch'],
      campFromH: 15,
      campToH: 19,
      rackFactor: 0.4,
    });
  });
});

describe('the sky as set', () => {
  it('passes persistence to the method that has one', () => {
    expect(skyLawOf({ ...usualSky, persistence: 0.4 })).toEqual({ method: 'distribution', persistence: 0.4 });
    expect(skyLawOf({ ...usualSky, method: 'transitions' })).toEqual({ method: 'transitions' });
  });
});

describe('the day of a panel', () => {
  it('has the hours and the named stops of the leg', () => {
    expect(panelDayOf(legFixture())).toEqual({ ridingHours: 6, stops: [{ label: 'Lunch', hours: 1 }] });
  });

  it('lies all day in the open when looked at alone', () => {
    expect(allDayIn({ as: 'aimed' })).toMatchObject({
      whileRiding: null,
      inCamp: { as: 'aimed' },
      campToH: 24,
    });
  });
});
