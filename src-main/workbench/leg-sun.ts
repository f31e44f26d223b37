import type { Station } from '../../shared-types/climate.ts';
import type { Item, ItemOf } from '../../shared-types/item.ts';
import type {
  Expected,
  LegStation,
  LegSun,
  Lying,
  PanelSun,
  SunBy,
  SunPeriod,
} from '../../shared-types/leg-sun.ts';
import { failure, success, type Outcome } from '../../shared-types/outcome.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { Settings } from '../../shared-types/settings.ts';
import { daysBefore, type Leg, type Tour } from '../../shared-types/tour.ts';
import { layPanels, lightStepsPerDay, type LaidPanels } from '../model/flow/panel-power.ts';
import { panelSchedule, type PanelDay, type PanelPlacement } from '../model/flow/panel-schedule.ts';
import { aimedOverFlat, dailyYields, spreadOfDay, summarise, weekDays } from '../model/flow/panel-yield.ts';
import { tourSun, type TourSun } from '../model/flow/tour-sun.ts';
import { isoDateOf, middlesOfMonths, monthOf, noonOf } from '../model/sun/calendar.ts';
import { drawSkies, type Skies } from '../model/sun/history/draw-skies.ts';
import { riseAndSet } from '../model/sun/rise-and-set.ts';
import { ofKind, panelModels, type CarriedItem } from './assemble/kit.ts';
import { legNotes } from './assemble/leg-notes.ts';
import type { SettledPlace } from './assemble/place.ts';
import { settleLeg } from './assemble/settle-leg.ts';
import { allDayIn, panelDayOf, placementModel, restDay, skyLawOf } from './assemble/sky.ts';

/** What a look at a leg's sun needs of the catalogue. */
export interface LegSunSources {
  readonly stations: readonly Station[];
  readonly items: readonly Item[];
  readonly scenarios: readonly Scenario[];
  readonly settings: Settings;
}

/** What the sun gives each panel that the rider owns or considers, on one leg of a tour. */
export function legSun(
  tour: Tour,
  legIndex: number,
  lying: Lying,
  by: SunBy,
  { stations, items, scenarios, settings }: LegSunSources,
): Outcome<LegSun> {
  const settled = settleLeg(tour, legIndex, stations);
  if (!settled.ok) return settled;
  const { leg, place } = settled.value;
  const lies = layingOf(lying, leg, scenarios);
  if (lies === null) return failure('not-found', 'That scenario is not in the catalogue (any more).');
  const firstDay = daysBefore(tour, legIndex);
  const noons = legNoons(tour.startDate, firstDay, leg.days);
  return success(sunOf(leg, place, noons, lies, by, panelsOf(items), settings));
}

function sunOf(
  leg: Leg,
  place: SettledPlace,
  noons: readonly number[],
  lies: Laying,
  by: SunBy,
  panels: readonly PanelLine[],
  settings: Settings,
): LegSun {
  const days = drawDays(place, noons, settings);
  const shown: ShownDays =
    by === 'day'
      ? { days, count: leg.days }
      : { days: drawDays(place, middlesOfMonths(noons[0]!), settings), count: monthsAYear };
  const span = { from: 0, to: leg.days };
  const ratio = aimedOverFlat(days.sun, days.skies, span, settings.sky);
  return {
    leg: leg.label,
    station: stationOf(place),
    periods: eachOf(shown, (day) => periodOf(place, shown.days, day)),
    panels: panelSuns(panels, lies, days, leg.days, shown, settings),
    aimedOverFlat: ratio,
    notes: legNotes(leg, place, days.sun, span, ratio),
    histories: settings.sky.histories,
  };
}

const monthsAYear = 12;
const minutesPerDay = 1440;

interface DrawnDays {
  readonly noons: readonly number[];
  readonly sun: TourSun;
  readonly skies: Skies;
}

/** The days a chart has a bar for: the first `count` of those drawn. */
interface ShownDays {
  readonly days: DrawnDays;
  readonly count: number;
}

function eachOf<T>({ count }: ShownDays, make: (day: number) => T): readonly T[] {
  return Array.from({ length: count }, (_, day) => make(day));
}

function drawDays(place: SettledPlace, noons: readonly number[], { sky, stepMinutes }: Settings): DrawnDays {
  const days = noons.map((noonMs) => ({ climate: place.climate, noonMs }));
  const sun = tourSun(days, lightStepsPerDay(minutesPerDay / Number(stepMinutes)));
  return { noons, sun, skies: drawSkies(sun.expected, skyLawOf(sky), sky.histories, sky.seed) };
}

/** The days of the leg, and as many after it as a week needs. */
function legNoons(startDate: string, firstDay: number, days: number): readonly number[] {
  return Array.from({ length: Math.max(days, weekDays) }, (_, day) => noonOf(startDate, firstDay + day));
}

interface Laying {
  readonly placement: PanelPlacement;
  readonly day: PanelDay;
}

/** As a scenario places panels on a riding day of the leg, or all day in the open. */
function layingOf(lying: Lying, leg: Leg, scenarios: readonly Scenario[]): Laying | null {
  if (lying.as !== 'scenario') return { placement: allDayIn({ as: lying.as }), day: restDay };
  const scenario = scenarios.find(({ id }) => id === lying.scenarioId);
  return scenario === undefined
    ? null
    : { placement: placementModel(scenario.placement), day: panelDayOf(leg) };
}

type PanelLine = CarriedItem<ItemOf<'panel'>>;

/** One of each panel owned or considered. */
function panelsOf(items: readonly Item[]): readonly PanelLine[] {
  const lines = items
    .filter(({ state }) => state !== 'retired')
    .map((item): CarriedItem => ({ item, carried: 1 }));
  return ofKind(lines, 'panel');
}

function panelSuns(
  panels: readonly PanelLine[],
  laying: Laying,
  leg: DrawnDays,
  legDays: number,
  shown: ShownDays,
  settings: Settings,
): readonly PanelSun[] {
  const yieldsOf = (days: DrawnDays) =>
    dailyYields(laid(panels, laying, days, settings), days.sun, days.skies);
  const ofLeg = yieldsOf(leg);
  const ofShown = shown.days === leg ? ofLeg : yieldsOf(shown.days);
  return panels.map(({ item }, at) => ({
    itemId: item.id,
    label: item.label,
    periods: eachOf(shown, (day) => spreadOfDay(ofShown[at]!, shown.days.skies.days, day)),
    ...summarise(ofLeg[at]!, leg.skies.days, legDays),
  }));
}

function laid(
  panels: readonly PanelLine[],
  { placement, day }: Laying,
  { sun, skies }: DrawnDays,
  { sky }: Settings,
): LaidPanels {
  const schedule = panelSchedule(day, placement, sun.stepsPerDay);
  const allOneLeg = new Uint16Array(skies.days);
  return layPanels(panelModels(panels), placement, sun, [schedule], allOneLeg, sky);
}

function stationOf({ station, stationKm, stationHigherM, warmth }: SettledPlace): LegStation {
  return {
    place: station.place,
    country: station.country,
    km: stationKm,
    higherM: stationHigherM,
    source: station.source,
    temperaturesFrom: warmth === station ? null : warmth.place,
  };
}

function periodOf(
  { climate, lonDeg }: SettledPlace,
  { noons, sun, skies }: DrawnDays,
  day: number,
): SunPeriod {
  const noonMs = noons[day]!;
  const month = monthOf(noonMs);
  const topOfAirKWhM2 = sun.courses[day]!.extraterrestrialWhM2 / 1000;
  const clearness = spreadOfDay(skies.clearness, skies.days, day);
  return {
    date: isoDateOf(noonMs),
    sun: riseAndSet(noonMs, climate.latDeg, lonDeg),
    radiationKWhM2: times(clearness, topOfAirKWhM2),
    minDegC: climate.minDegC[month]!,
    maxDegC: climate.maxDegC[month]!,
  };
}

function times({ mean, band }: Expected, factor: number): Expected {
  return { mean: mean * factor, band: { p10: band.p10 * factor, p90: band.p90 * factor } };
}
