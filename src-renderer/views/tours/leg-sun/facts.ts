import type { LegSun, SunBy, SunPeriod } from '../../../../shared-types/leg-sun.ts';
import type { Fact } from '../../../parts/fact.ts';
import { display } from '../../../state/display.svelte.ts';
import { stationText } from '../station-text.ts';
import { periodPhrase, sunUpText } from './periods.ts';

interface Ridden {
  readonly periods: readonly SunPeriod[];
  readonly by: SunBy;
  readonly ownRadiation: boolean;
}

/** What the figures of a leg rest on: its station, and how long and how warm its days are. */
export function sunFacts({ station }: LegSun, ridden: Ridden, locale?: string): readonly Fact[] {
  const facts = [{ name: 'Climate station', value: stationText(station, locale) }];
  if (station.temperaturesFrom !== null) {
    facts.push({ name: 'Temperatures from', value: station.temperaturesFrom });
  }
  if (ridden.ownRadiation) facts.push({ name: 'Light', value: 'your own monthly figures' });
  const { periods, by } = ridden;
  const [first] = periods;
  const last = periods.at(-1);
  if (first === undefined || last === undefined) return facts;
  return [...facts, daylight(first, last, by, locale), air(periods, locale)];
}

function daylight(first: SunPeriod, last: SunPeriod, by: SunBy, locale?: string): Fact {
  const shown = first === last ? [first] : [first, last];
  const times = shown.map(({ date, sun }) => `${sunUpText(sun)} ${periodPhrase(date, by, locale)}`);
  return { name: 'Sunrise to sunset, local mean solar time', value: times.join('; ') };
}

function air(periods: readonly SunPeriod[], locale?: string): Fact {
  const least = display.figure(Math.min(...periods.map(({ minDegC }) => minDegC)), '°C', { locale });
  const most = display.temperature(Math.max(...periods.map(({ maxDegC }) => maxDegC)), { locale });
  return { name: 'Air, mean lowest to mean highest of the day', value: `${least} to ${most}` };
}
