import { describe, expect, it } from 'vitest';
import type { LegRide } from '../../../../../shared-types/leg-ride.ts';
import type { Leg } from '../../../../../shared-types/tour.ts';
import { rideFigures } from '../../../../../src-renderer/views/tours/leg-ride/figures.ts';
import { trackFixture } from '../../../../support/track-fixture.ts';
import { legHub, legRide } from '../../../support/fake-leg-ride.ts';
import { demoCatalogue } from '../../../support/fake-workbench.ts';

const [byClass] = demoCatalogue().tours[0]!.legs;
const byTrack = (heightsM: number[]): Leg => ({
  ...byClass!,
  terrain: {
    as: 'track',
    terrainClass: 'rolling',
    pace: 'computed',
    track: trackFixture({ heightsM }),
  },
});
const names = (ride: LegRide | null, leg: Leg | undefined): string[] =>
  rideFigures(ride, leg).map(({ fileName }) => fileName);

describe('rideFigures()', () => {
  it('shows nothing of a leg that is not stored', () => {
    expect(names(null, undefined)).toEqual([]);
  });

  it('shows the profile of a track without any answer', () => {
    expect(names(null, byTrack([200, 300]))).toEqual(['elevation-profile']);
    expect(names(null, byTrack([]))).toEqual([]);
  });

  it('shows days only where they differ', () => {
    const alike = legRide({ hub: legHub({ daysWh: null }) });
    expect(names(alike, byClass)).toEqual(['speed-and-hub-power', 'grades']);
    expect(names(legRide({ hub: null }), byClass)).toEqual(['speed-and-hub-power', 'grades']);
  });

  it('shows speed, days, grades and profile of a track with a hub', () => {
    expect(names(legRide(), byTrack([200, 300]))).toEqual([
      'speed-and-hub-power',
      'hub-by-day',
      'grades',
      'elevation-profile',
    ]);
  });
});
