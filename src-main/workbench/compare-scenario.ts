import type { LegYield, ScenarioResult } from '../../shared-types/comparison.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { TourRecord } from '../model/flow/record/recorder.ts';
import type { Simulation } from '../model/flow/simulate.ts';
import { meanRadiationWhM2 } from '../model/flow/tour-sun.ts';
import { airCheck } from '../model/judge/air-transport.ts';
import { costOf } from '../model/judge/cost.ts';
import { frontShares } from '../model/judge/front-load.ts';
import { massOf } from '../model/judge/mass.ts';
import { hubCostOf } from '../model/judge/hub-cost.ts';
import type { Pace, RiddenCourse } from '../model/ride/ride-course.ts';
import { airLines } from './assemble/air-lines.ts';
import { kitAssumptions } from './assemble/assumptions.ts';
import { carriedItems, type CarriedItem } from './assemble/kit.ts';
import { pricedLines, weighedLines } from './assemble/money-and-mass.ts';
import { hubSet } from './assemble/hub-set.ts';
import { riddenNotes } from './assemble/ride-notes.ts';
import { laterMinutes } from './assemble/ride.ts';
import type { ComparedTour } from './compared-tour.ts';
import { criterionValues, minutesLostOf } from './criterion-values.ts';
import { daysWithoutWall, nightsNeeded } from './days-without-wall.ts';
import {
  dayLedgersOf,
  deviceLedgersOf,
  firstShortOf,
  marginOf,
  reserveOf,
  riskOf,
  riskOnDays,
  spilledShareOf,
  storedCourseOf,
} from './energy-results.ts';
import type { ComparisonGround } from './ground.ts';
import { readyScenario, simulateScenario, type ReadyScenario } from './simulate-scenario.ts';
import { stopRules } from './stop-rules/stop-rules.ts';
import { wallOrderChange } from './wall-order.ts';

/**
 * Simulates one scenario on a tour and works out its figures.
 *
 * @param onWalk called after each history walked
 */
export function compareScenario(
  scenario: Scenario,
  tour: ComparedTour,
  { items, kept, settings }: Pick<ComparisonGround, 'items' | 'kept' | 'settings'>,
  onWalk: () => void,
): ScenarioResult {
  const { currency } = settings;
  const lines = carriedItems(scenario, items);
  const shares = frontShares(settings.frontLoad);
  const mass = massOf(weighedLines(lines), shares);
  const hubParts = hubSet(lines, shares);
  const ready = readyScenario(scenario, tour, lines, mass.carriedG);
  const simulation = simulateScenario(ready, tour.risk.confidence, onWalk);
  const energy = energyOf(simulation, ready, tour, onWalk);
  const gapDays = daysWithoutWall(ready, tour, onWalk);
  const cost = costOf(pricedLines(lines), settings, nightsNeeded(gapDays, tour.timeline.days));
  const legs = legYields(tour, ready, simulation.record);
  return {
    id: scenario.id,
    label: scenario.label,
    method: scenario.method,
    carries: carriesLine(lines),
    values: criterionValues({
      cost,
      mass,
      margin: energy.margin.value,
      risk: energy.risk.share,
      minutesLost: minutesLostOf(tour.tour, ready.rides),
      daysWithoutWall: gapDays,
    }),
    cost,
    mass,
    hubCost: hubParts.length === 0 ? null : hubCostOf(hubParts, currency),
    air: airCheck(airLines(lines, items, tour.tour.leftAtHome)),
    ...energy,
    legs,
    stopRules: stopRules({ ...tour, rules: scenario.rules, lines, ready, legs, days: energy.days }),
    assumptions: kitAssumptions(scenario, lines, kept),
  };
}

/** All that the walks through the histories tell of the tour as a whole. */
function energyOf(
  simulation: Simulation,
  ready: ReadyScenario,
  { tour }: Pick<ComparedTour, 'tour'>,
  onWalk: () => void,
) {
  const { network, course } = ready;
  const { record } = simulation;
  return {
    margin: marginOf(simulation, network, course.stepsPerDay),
    risk: riskOf(record),
    firstShort: firstShortOf(record, network, course.stepsPerDay),
    reserveWh: reserveOf(record),
    spilledShare: spilledShareOf(record),
    stored: storedCourseOf(record, network),
    days: dayLedgersOf(record, tour.startDate),
    devices: deviceLedgersOf(record, network),
    wallOrder: wallOrderChange(ready, onWalk),
  };
}

function legYields(
  model: ComparedTour,
  { panels, course, rides }: ReadyScenario,
  record: TourRecord,
): readonly LegYield[] {
  const { timeline, tour, places, sun } = model;
  return tour.legs.map((leg, index) => {
    const onLeg = <T>(values: ArrayLike<T>, legOf: ArrayLike<number>): T[] =>
      Array.from(values).filter((_, i) => legOf[i] === index);
    const sumOnLeg = (values: Float64Array): number =>
      onLeg(values, timeline.leg).reduce((sum, value) => sum + value, 0);
    const days = onLeg(Array.from(sun.courses.keys()), timeline.legOfDay);
    const meanOf = (pick: (day: number) => number): number =>
      days.reduce((sum, day) => sum + pick(day), 0) / leg.days;
    return {
      leg: leg.label,
      days: leg.days,
      station: places[index]!.station.place,
      stationKm: places[index]!.stationKm,
      stationHigherM: places[index]!.stationHigherM,
      notes: [...model.notes[index]!, ...riddenNotes(leg, tour, rides[index]!)],
      radiationKWhM2: meanOf((day) => meanRadiationWhM2(sun, day)) / 1000,
      dayLengthH: meanOf((day) => (24 / Math.PI) * sun.courses[day]!.sunsetRad),
      panelWh: (sumOnLeg(panels.meanW) * timeline.stepHours) / leg.days,
      hubWh: sumOnLeg(course.hubWh) / leg.days,
      wallNights: onLeg(timeline.wallAfterDay, timeline.legOfDay).reduce((sum, wall) => sum + wall, 0),
      risk: riskOnDays(record, days),
      ...timesOf(rides[index]!, leg.ridingHours),
    };
  });
}

/** Minutes a day by what causes them: they add up to what the whole kit costs. */
function timesOf(
  { loaded, off, on }: RiddenCourse,
  ridingHours: number,
): Pick<LegYield, 'speedKmh' | 'massMinutes' | 'dragMinutes' | 'offMinutes'> {
  const minutes = (share: number): number => laterMinutes(share, ridingHours);
  const byHub = (pace: Pace | null): number =>
    pace === null ? 0 : minutes(pace.laterShare - loaded.laterShare);
  return {
    speedKmh: (on ?? loaded).speedKmh,
    massMinutes: minutes(loaded.laterShare),
    dragMinutes: byHub(on),
    offMinutes: byHub(off),
  };
}

/** The kit in a line, cables left out; labels hold commas, so semicolons part them. */
function carriesLine(lines: readonly CarriedItem[]): string {
  const named = lines.filter(({ item }) => item.kind !== 'accessory');
  if (named.length === 0) return 'nothing';
  return named
    .map(({ item, carried }) => (carried > 1 ? `${carried} × ${item.label}` : item.label))
    .join('; ');
}
