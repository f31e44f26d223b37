import { percent, wattHours } from '../../../../shared-types/figures.ts';
import type { LegHub, LegRide } from '../../../../shared-types/leg-ride.ts';
import { display } from '../../../state/display.svelte.ts';
import { timeCost } from './minutes.ts';

/** How much later the drag of the hub makes a day, beside what the kit's grams do, min. */
export function dragMinADay({ loaded, on, off }: Pick<LegRide, 'loaded' | 'on' | 'off'>): number {
  return (on ?? off ?? loaded).laterMinADay - loaded.laterMinADay;
}

/** What the kit gives and takes on the leg, in a sentence. */
export function rideFinding(ride: LegRide, locale?: string): string {
  if (ride.hub === null) return kitFinding(ride, locale);
  const drag = timeCost({ minutes: dragMinADay(ride), verb: 'costs', after: 'a day' }, locale);
  const minutes = ride.loaded.laterMinADay;
  const mass = timeCost({ minutes, verb: 'cost', after: minutes < 0 ? '' : 'more' }, locale);
  return `${givenText(ride.hub, ride.needWhADay, locale)}, and the hub’s drag ${drag}; the grams of the kit ${mass}`;
}

function kitFinding({ kitG, loaded }: LegRide, locale?: string): string {
  if (kitG <= 0) return 'The kit adds no grams and costs no time';
  const cost = timeCost({ minutes: loaded.laterMinADay, verb: 'cost', after: 'a day' }, locale);
  return `The kit’s ${display.mass(kitG, { locale })} ${cost}`;
}

function givenText({ converter, meanWhADay }: LegHub, needWhADay: number, locale?: string): string {
  if (converter === null) return 'Nothing takes the hub’s power';
  const given = `The hub gives ${wattHours(meanWhADay, locale)} on a mean day`;
  if (needWhADay <= 0) return given;
  return `${given}, ${percent(meanWhADay / needWhADay, { locale })} of what the devices need at its plug`;
}
