import { percent, wordsLocale } from '../../../shared-types/figures.ts';
import type { Placement } from '../../../shared-types/scenario.ts';

/** Where the panel lies through the day, in a line: only what says something about it as it lies. */
export function placementWords(placement: Placement): string {
  return [riding(placement), stops(placement), camp(placement)].join(', ');
}

function riding({ whileRiding, rackFactor, rackTiltDeg }: Placement): string {
  if (whileRiding === 'packed') return 'packed away while riding';
  const lies = whileRiding === 'flat' ? 'flat' : `tilted ${rackTiltDeg}°`;
  return `${lies} on the rack at ${percent(rackFactor, { locale: wordsLocale })} of the light`;
}

function stops({ atStops, onlyAtStops, ...tilt }: Placement): string {
  const where =
    onlyAtStops.length === 0 || atStops === 'packed' ? 'stops' : `stops: ${onlyAtStops.join('; ')}`;
  return `${atRest(atStops, tilt)} at ${where}`;
}

const wholeDay = { fromH: 0, toH: 24 } as const;

function camp({ inCamp, campFromH, campToH, ...tilt }: Placement): string {
  const always = campFromH === wholeDay.fromH && campToH === wholeDay.toH;
  const hours = always || inCamp === 'packed' ? '' : ` from ${campFromH} to ${campToH} h`;
  return `${atRest(inCamp, tilt)} in camp${hours}`;
}

function atRest(
  lies: Placement['atStops'],
  { restTiltDeg, facingDeg }: Pick<Placement, 'restTiltDeg' | 'facingDeg'>,
): string {
  if (lies === 'packed') return 'packed away';
  return lies === 'tilted' ? `tilted ${restTiltDeg}° facing ${facingDeg}°` : lies;
}
