import type { Station } from '../../shared-types/climate.ts';
import { addDays } from '../../shared-types/dates.ts';
import type { Item } from '../../shared-types/item.ts';
import type {
  HubPoint,
  LegHub,
  LegRide,
  Pace,
  RideDay,
  RidePower,
  SpeedShare,
} from '../../shared-types/leg-ride.ts';
import { success, type Outcome } from '../../shared-types/outcome.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { Settings } from '../../shared-types/settings.ts';
import { daysBefore, type Leg, type Tour } from '../../shared-types/tour.ts';
import type { GradeShare } from '../../shared-types/track.ts';
import { meanUseWhPerDay } from '../model/flow/planned-use.ts';
import { frontShares } from '../model/judge/front-load.ts';
import { massOf } from '../model/judge/mass.ts';
import { percentile } from '../model/percentile.ts';
import type { Course } from '../model/ride/course.ts';
import type { GeneratorWheel } from '../model/ride/hub.ts';
import type { Pace as ModelPace, RiddenCourse } from '../model/ride/ride-course.ts';
import { carriedItems, ofKind, travellingDevices, type CarriedItem } from './assemble/kit.ts';
import { weighedLines } from './assemble/money-and-mass.ts';
import { hubNotes } from './assemble/hub-notes.ts';
import { reachesDevices } from './assemble/plug-need.ts';
import { riddenNotes, rideNotes } from './assemble/ride-notes.ts';
import { courseOf, laterMinutes, rideLeg, wheelOf } from './assemble/ride.ts';
import { settleLeg } from './assemble/settle-leg.ts';
import { timelineOf } from './assemble/tour.ts';

/** What a look at a leg's ride needs of the catalogue. */
export interface LegRideSources {
  readonly stations: readonly Station[];
  readonly items: readonly Item[];
  readonly scenario: Scenario;
  readonly settings: Settings;
}

/** How one leg of a tour is ridden with the kit of a scenario. */
export function legRide(tour: Tour, legIndex: number, sources: LegRideSources): Outcome<LegRide> {
  const { scenario, items, stations, settings } = sources;
  const settled = settleLeg(tour, legIndex, stations);
  if (!settled.ok) return settled;
  const { leg, place } = settled.value;
  const lines = carriedItems(scenario, items);
  const kitG = massOf(weighedLines(lines), frontShares(settings.frontLoad)).carriedG;
  const ridden = rideLeg(tour, legIndex, place.climate, lines, kitG);
  const days = daysOf(ridden, leg, addDays(tour.startDate, daysBefore(tour, legIndex)));
  const demandWhADay = meanUseWhPerDay(
    travellingDevices(items, tour.leftAtHome),
    timelineOf(tour, Number(settings.stepMinutes)),
  );
  // Where nothing passes the hub's power on, what the devices ask for is shown, and every day falls short.
  const reaching = reachesDevices(scenario.rules, lines);
  const needWhADay = demandWhADay / (reaching > 0 ? reaching : 1);
  return success({
    leg: leg.label,
    scenario: scenario.label,
    ridingHours: leg.ridingHours,
    kitG,
    ...pacesOf(ridden, leg.ridingHours),
    hub: hubOf(lines, tour, ridden, days, reaching > 0 ? needWhADay : Infinity),
    power: powerOf(ridden),
    needWhADay,
    days,
    speeds: speedShares(ridden),
    grades: gradesOf(courseOf(leg, tour.bicycle)),
    pushingShare: ridden.pushingShare,
    brakingShare: ridden.brakingShare,
    notes: [...rideNotes(leg, place), ...riddenNotes(leg, tour, ridden), ...hubNotes(lines, scenario.rules)],
  });
}

function pacesOf(
  { bare, loaded, off, on }: RiddenCourse,
  ridingHours: number,
): Pick<LegRide, 'bare' | 'loaded' | 'off' | 'on'> {
  const paceOf = ({ speedKmh, laterShare }: ModelPace): Pace => ({
    speedKmh,
    kmADay: speedKmh * ridingHours,
    laterMinADay: laterMinutes(laterShare, ridingHours),
  });
  return {
    bare: paceOf(bare),
    loaded: paceOf(loaded),
    off: off === null ? null : paceOf(off),
    on: on === null ? null : paceOf(on),
  };
}

function daysOf({ stages }: RiddenCourse, { ridingHours }: Leg, firstDate: string): readonly RideDay[] {
  return stages.map(({ speedKmh, plugW }, day) => ({
    date: addDays(firstDate, day),
    km: speedKmh * ridingHours,
    speedKmh,
    hubWh: plugW * ridingHours,
  }));
}

function hubOf(
  lines: readonly CarriedItem[],
  { bicycle }: Pick<Tour, 'bicycle'>,
  ridden: RiddenCourse,
  days: readonly RideDay[],
  needWhADay: number,
): LegHub | null {
  const wheel = wheelOf(lines);
  const [hub] = ofKind(lines, 'generator-hub');
  if (wheel === null || hub === undefined) return null;
  const daysWh = days.map(({ hubWh }) => hubWh);
  return {
    label: hub.item.label,
    converter: ofKind(lines, 'converter')[0]?.item.label ?? null,
    meanWhADay: daysWh.reduce((sum, wh) => sum + wh, 0) / days.length,
    daysWh: spreadOf(daysWh),
    meanW: ridden.plugW,
    startSpeedKmh: wheel.startSpeedKmh,
    aboveStartShare: ridden.aboveStartShare,
    curve: curveOf(wheel, bicycle.downhillCapKmh),
    shortDays: daysWh.filter((wh) => wh < needWhADay).length,
  };
}

function powerOf({ power: { drivetrainW, bearingsW, ...parts } }: RiddenCourse): RidePower {
  return { ...parts, frictionW: drivetrainW + bearingsW };
}

/** Days that differ by less are alike. */
const alikeWh = 0.05;

function spreadOf(daysWh: readonly number[]): LegHub['daysWh'] {
  const sorted = daysWh.toSorted((a, b) => a - b);
  if (sorted.at(-1)! - sorted[0]! < alikeWh) return null;
  return { p10: percentile(sorted, 0.1), p50: percentile(sorted, 0.5), p90: percentile(sorted, 0.9) };
}

const curveToKmh = 50;

/** Past any speed the leg is ridden at. */
function curveOf({ plugW, onW, offW }: GeneratorWheel, fastestKmh: number): readonly HubPoint[] {
  const last = Math.max(curveToKmh, Math.ceil(fastestKmh) + bandKmh);
  return Array.from({ length: last + 1 }, (_, speedKmh) => ({
    speedKmh,
    plugW: plugW(speedKmh),
    onW: onW(speedKmh),
    offW: offW(speedKmh),
  }));
}

const bandKmh = 5;

function speedShares({ speedKmh, hours }: RiddenCourse): readonly SpeedShare[] {
  const all = hours.reduce((sum, each) => sum + each, 0);
  const shares: number[] = [];
  speedKmh.forEach((kmh, way) => {
    const band = Math.floor(kmh / bandKmh);
    while (shares.length <= band) shares.push(0);
    shares[band]! += hours[way]! / all;
  });
  return shares.map((share, band) => ({ fromKmh: band * bandKmh, toKmh: (band + 1) * bandKmh, share }));
}

/** Grades within this of each other, %, are one. */
const sameGradePct = 1e-6;

function gradesOf({ ways, pieces }: Course): readonly GradeShare[] {
  const kmByGrade = new Map<number, number>();
  let all = 0;
  for (const { way, km } of pieces.flatMap(({ parts }) => parts)) {
    const gradePct = Math.round((ways[way]!.grade * 100) / sameGradePct) * sameGradePct;
    kmByGrade.set(gradePct, (kmByGrade.get(gradePct) ?? 0) + km);
    all += km;
  }
  return [...kmByGrade]
    .toSorted(([a], [b]) => a - b)
    .map(([gradePct, km]) => ({ gradePct, share: km / all }));
}
