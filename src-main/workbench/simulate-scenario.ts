import type { Scenario } from '../../shared-types/scenario.ts';
import { layCourse, type TourCourse } from '../model/flow/course.ts';
import type { Draws } from '../model/flow/histories/draws.ts';
import { panelHistories, type PanelHistories } from '../model/flow/histories/panel-histories.ts';
import { compileNetwork, type Network } from '../model/flow/network.ts';
import { layPanels } from '../model/flow/panel-power.ts';
import { panelSchedule } from '../model/flow/panel-schedule.ts';
import { simulate, type Simulation } from '../model/flow/simulate.ts';
import type { Timeline } from '../model/flow/timeline.ts';
import type { RiddenCourse } from '../model/ride/ride-course.ts';
import { bankModels, chargerModels, ofKind, panelModels, type CarriedItem } from './assemble/kit.ts';
import { panelDayOf, placementModel } from './assemble/sky.ts';
import { rideLeg } from './assemble/ride.ts';
import type { ComparedTour } from './compared-tour.ts';

/** A tour under a scenario, before it is walked. */
export interface ReadyScenario {
  readonly network: Network;
  readonly course: TourCourse;
  readonly histories: readonly Draws[];
  readonly panels: PanelHistories;
  /** By leg. */
  readonly rides: readonly RiddenCourse[];
  /** The course of the same tour with other nights. */
  readonly courseWith: (timeline: Timeline) => TourCourse;
}

/** Lays out a tour under a scenario: the kit as a network, the course of its steps, and what each history brings. */
export function readyScenario(
  scenario: Scenario,
  tour: ComparedTour,
  lines: readonly CarriedItem[],
  kitG: number,
): ReadyScenario {
  const network = networkOf(scenario, tour, lines);
  const panels = panelsOf(scenario, tour, lines);
  const rides = ridesOf(tour, lines, kitG);
  const around = {
    hubPlugW: hubPlugW(rides),
    airDegC: airByStep(tour),
    cellsSleep: scenario.rules.cellsSleep,
  };
  const courseWith = (timeline: Timeline): TourCourse => layCourse(network, timeline, around);
  const histories = panels.byHistory.map((panelW, history) => ({
    panelW,
    outletIsFree: tour.outletIsFree[history]!,
    useScale: tour.useScale[history]!,
  }));
  return { network, course: courseWith(tour.timeline), histories, panels, rides, courseWith };
}

/** Every leg ridden with a kit. */
export function ridesOf(
  { tour, places }: ComparedTour,
  lines: readonly CarriedItem[],
  kitG: number,
): readonly RiddenCourse[] {
  return tour.legs.map((_, leg) => rideLeg(tour, leg, places[leg]!.climate, lines, kitG));
}

/** By day of the tour: mean power of the hub at its plug while riding, W. */
export function hubPlugW(rides: readonly RiddenCourse[]): readonly number[] {
  return rides.flatMap(({ stages }) => stages.map(({ plugW }) => plugW));
}

export function networkOf(
  { rules }: Pick<Scenario, 'rules'>,
  { devices }: ComparedTour,
  lines: readonly CarriedItem[],
): Network {
  return compileNetwork({
    devices,
    banks: bankModels(ofKind(lines, 'bank')),
    chargers: chargerModels(ofKind(lines, 'wall-charger')),
    rules,
  });
}

export function panelsOf(
  scenario: Pick<Scenario, 'placement'>,
  { tour, timeline, sun, skies, optics }: ComparedTour,
  lines: readonly CarriedItem[],
): PanelHistories {
  const placement = placementModel(scenario.placement);
  const schedules = tour.legs.map((leg) => panelSchedule(panelDayOf(leg), placement, sun.stepsPerDay));
  const panels = panelModels(ofKind(lines, 'panel'));
  const laid = layPanels(panels, placement, sun, schedules, timeline.legOfDay, optics);
  return panelHistories(laid, sun, skies, timeline.stepsPerDay);
}

/** The sun may be reckoned in shorter steps than the walk: the air of the first of them stands for all. */
export function airByStep({ sun, timeline }: ComparedTour): Float64Array {
  const finer = sun.stepsPerDay / timeline.stepsPerDay;
  return Float64Array.from({ length: timeline.steps }, (_, step) => sun.airDegC[step * finer]!);
}

/** Longest tour whose stored energy is kept step by step, in steps; a longer one keeps it by the hour. */
const mostStepsKept = 3000;
const hoursPerDay = 24;

/** Walks a scenario through all histories. */
export function simulateScenario(
  { network, course, histories }: ReadyScenario,
  confidence: number,
  onWalk: () => void,
): Simulation {
  const pointsPerDay =
    course.steps <= mostStepsKept ? course.stepsPerDay : Math.min(course.stepsPerDay, hoursPerDay);
  return simulate(network, course, histories, { confidence, pointsPerDay, onWalk });
}
