import { formatNumber, withUnit, wordsLocale } from '../../../shared-types/figures.ts';
import { stationNotes } from '../../../shared-types/station-notes.ts';
import type { Leg } from '../../../shared-types/tour.ts';
import type { TourSun } from '../../model/flow/tour-sun.ts';
import { lapseKPerM } from '../../model/lapse-rate.ts';
import { advisedToDegC, noChargeHours } from '../../model/storage/charging-temperature.ts';
import type { SettledPlace } from './place.ts';

/** An aimed panel that gets over twice the light of a flat one stands under a low sun. */
const lowSunRatio = 2;
/** Own radiation this far above a cloudless sky is told of; less is the rounding of the figures. */
const heldFrom = 1.005;

/** The days of one leg within a row of days. */
export interface LegDays {
  readonly from: number;
  readonly to: number;
}

/** What the rider should know before trusting what a leg's sun is said to give. */
export function legNotes(
  leg: Leg,
  place: SettledPlace,
  sun: TourSun,
  days: LegDays,
  aimedOverFlat: number | null,
): readonly string[] {
  return [
    ...stationNotes({ place: place.station.place, km: place.stationKm, higherM: place.stationHigherM }),
    ...warmthNotes(place),
    ...radiationNotes(leg, sun, days),
    ...lightNotes(aimedOverFlat),
    ...chargingNotes(sun, days),
  ];
}

function warmthNotes({ station, warmth, warmthKm }: SettledPlace): string[] {
  if (warmth === station) return [];
  const away = withUnit(warmthKm, 'km', { locale: wordsLocale });
  const lapse = formatNumber(lapseKPerM * 1000, { digits: 1, locale: wordsLocale });
  return [
    `${station.place} has no temperatures: those of ${warmth.place}, ${away} away, are taken, corrected for height at ${lapse} K/km.`,
  ];
}

function radiationNotes(leg: Leg, { courses, expected }: TourSun, { from, to }: LegDays): string[] {
  const held = expected.slice(from, to).findIndex(({ mean, most }) => most > 0 && mean > most * heldFrom);
  if (leg.radiation.as !== 'own' || held < 0) return [];
  const most = expected[from + held]!.most * courses[from + held]!.extraterrestrialWhM2;
  const figure = withUnit(most / 1000, 'kWh/m²', { digits: 1, locale: wordsLocale });
  return [`Your radiation is more than a cloudless sky lets through; it is held at ${figure} a day.`];
}

function lightNotes(aimedOverFlat: number | null): string[] {
  if (aimedOverFlat === null) return ['The sun does not rise on this leg: a panel gives nothing.'];
  if (aimedOverFlat <= lowSunRatio) return [];
  const times = formatNumber(aimedOverFlat, { digits: 1, fixed: true, locale: wordsLocale });
  return [
    `Sun too low for a flat panel: aimed at the sun it would get ${times} times the light it gets lying flat.`,
  ];
}

/** Cells outside follow the air: the longest time of any day in which they may not be charged. */
function chargingNotes({ airDegC, stepsPerDay }: TourSun, { from, to }: LegDays): string[] {
  const days = Array.from({ length: to - from }, (_, day) =>
    airDegC.subarray((from + day) * stepsPerDay, (from + day + 1) * stepsPerDay),
  );
  const spells = days.map((air) => noChargeHours(air, 24 / stepsPerDay));
  const coldH = Math.max(...spells.map(({ tooColdH }) => tooColdH));
  const hotH = Math.max(...spells.map(({ tooHotH }) => tooHotH));
  const all = airDegC.subarray(from * stepsPerDay, to * stepsPerDay);
  return [
    ...(coldH > 0 ? [`${spellText('below freezing', coldH, lowest(all))}: never charge them then.`] : []),
    ...(hotH > 0
      ? [
          `${spellText(`above ${degrees(advisedToDegC)}`, hotH, -lowest(all.map((degC) => -degC)))}: charge none then.`,
        ]
      : []),
  ];
}

function spellText(where: string, hours: number, degC: number): string {
  const spell = withUnit(hours, 'h', { locale: wordsLocale });
  return `Lithium cells left outside are ${where} for up to ${spell} of a mean day, to ${degrees(degC)}`;
}

function lowest(values: Float64Array): number {
  return values.reduce((least, value) => Math.min(least, value), Infinity);
}

function degrees(degC: number): string {
  return withUnit(degC, '°C', { locale: wordsLocale });
}
