import type { LegRide } from '../../../../shared-types/leg-ride.ts';
import type { Leg } from '../../../../shared-types/tour.ts';
import type { Figure } from '../../../parts/charts/figure.ts';
import { daysFigure } from './days-figure.ts';
import { elevationFigure } from './elevation-figure.ts';
import { gradeFigure } from './grade-figure.ts';
import { speedFigure } from './speed-figure.ts';

/** The charts of a leg's ride: those of its track are there without an answer too. */
export function rideFigures(ride: LegRide | null, leg: Leg | undefined, locale?: string): readonly Figure[] {
  const elevation = leg?.terrain.as === 'track' ? elevationFigure(leg.terrain.track, locale) : null;
  const ofTrack = elevation === null ? [] : [elevation];
  if (ride === null) return ofTrack;
  const { hub } = ride;
  return [
    speedFigure(ride, locale),
    ...(hub === null || hub.daysWh === null ? [] : [daysFigure(ride, hub, locale)]),
    gradeFigure(ride.grades, locale),
    ...ofTrack,
  ];
}
