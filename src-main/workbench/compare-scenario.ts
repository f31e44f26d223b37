import type {
  Cost,
  CriterionValues,
  DayLedger,
  EnergyMargin,
  LegYield,
  Mass,
  ScenarioResult,
  Shortfall,
  StoredCourse,
} from '../../shared-types/comparison.ts';
import type { Item } from '../../shared-types/item.ts';
import { toMajor } from '../../shared-types/money.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import { account, accounts, type Account } from '../model/flow/ledger.ts';
import { energyMargin, type MarginResult } from '../model/flow/margin.ts';
import { compileNetwork, type Network } from '../model/flow/network.ts';
import { createRecord, runTour, type FlatMustHave, type RunRecord } from '../model/flow/run-tour.ts';
import { inLongerSteps, layPanels, meanPanelPower } from '../model/flow/panel-power.ts';
import { panelSchedule } from '../model/flow/panel-schedule.ts';
import { createState } from '../model/flow/step-state.ts';
import { buildSupply, type Supply } from '../model/flow/supply.ts';
import { meanRadiationWhM2 } from '../model/flow/tour-sun.ts';
import { costOf } from '../model/judge/cost.ts';
import { massOf } from '../model/judge/mass.ts';
import { hubCostOf } from '../model/judge/hub-cost.ts';
import type { Pace, RiddenCourse } from '../model/ride/ride-course.ts';
import { isoDateOf, noonOf } from '../model/sun/calendar.ts';
import { kitAssumptions } from './assemble/assumptions.ts';
import {
  bankModels,
  carriedItems,
  chargerModels,
  ofKind,
  panelModels,
  travellingDevices,
  type CarriedItem,
} from './assemble/kit.ts';
import { panelDayOf, placementModel } from './assemble/sky.ts';
import { pricedLines, weighedLines } from './assemble/money-and-mass.ts';
import { hubSet } from './assemble/hub-set.ts';
import { riddenNotes } from './assemble/ride-notes.ts';
import { laterMinutes, rideLeg } from './assemble/ride.ts';
import type { TourModel } from './assemble/tour.ts';

/** Simulates one scenario on a tour and works out its four figures. */
export function compareScenario(
  scenario: Scenario,
  model: TourModel,
  items: readonly Item[],
  currency: string,
): ScenarioResult {
  const lines = carriedItems(scenario, items);
  const mass = massOf(weighedLines(lines));
  const hubParts = hubSet(lines);
  const cost = costOf(pricedLines(lines), currency);
  const rides = ridesOf(model, lines, mass.carriedG);
  const network = networkOf(scenario, model, items, lines);
  const supply = supplyOf(scenario, model, lines, rides);
  const margin = marginOf(energyMargin(network, model.timeline, [supply]), network, model);
  const run = runPlan(network, model, supply);
  const firstShort = run.flat.step < 0 ? null : shortfall(run.flat, network, model);
  return {
    id: scenario.id,
    label: scenario.label,
    method: scenario.method,
    carries: carriesLine(lines),
    values: valuesOf(cost, mass, margin),
    cost,
    mass,
    hubCost: hubParts.length === 0 ? null : hubCostOf(hubParts, currency),
    margin,
    flatShare: firstShort === null ? 0 : 1,
    firstShort,
    lowestStoredWh: run.record.storedWh.reduce((least, wh) => Math.min(least, wh), Infinity),
    stored: storedCourse(run.record, network, model),
    days: dayLedgers(run.record, model),
    legs: legYields(model, supply, rides),
    assumptions: kitAssumptions(scenario, lines),
  };
}

function valuesOf(cost: Cost, mass: Mass, margin: EnergyMargin): CriterionValues {
  return {
    cost: toMajor(cost.toBuy),
    grams: mass.carriedG,
    frontWheelGrams: mass.frontWheelG,
    margin: margin.value,
  };
}

function ridesOf(
  { tour, places }: TourModel,
  lines: readonly CarriedItem[],
  kitG: number,
): readonly RiddenCourse[] {
  return tour.legs.map((_, index) => rideLeg(tour, index, places[index]!.climate, lines, kitG));
}

function networkOf(
  scenario: Scenario,
  model: TourModel,
  items: readonly Item[],
  lines: readonly CarriedItem[],
): Network {
  return compileNetwork({
    devices: travellingDevices(items, model.tour.leftAtHome),
    banks: bankModels(ofKind(lines, 'bank')),
    chargers: chargerModels(ofKind(lines, 'wall-charger')),
    wallOrder: scenario.rules.atWall,
    unsteadyFeed: scenario.rules.unsteadySource,
  });
}

function supplyOf(
  scenario: Scenario,
  model: TourModel,
  lines: readonly CarriedItem[],
  rides: readonly RiddenCourse[],
): Supply {
  const { timeline } = model;
  return buildSupply(
    timeline,
    panelPower(scenario, model, lines),
    rides.flatMap(({ stages }) => stages.map(({ plugW }) => plugW)),
    timeline.luckChance,
  );
}

/** What the panels give in each step: the mean over the drawn skies. */
function panelPower(
  scenario: Scenario,
  { tour, timeline, sun, skies, optics }: TourModel,
  lines: readonly CarriedItem[],
): Float64Array {
  const placement = placementModel(scenario.placement);
  const schedules = tour.legs.map((leg) => panelSchedule(panelDayOf(leg), placement, sun.stepsPerDay));
  const panels = panelModels(ofKind(lines, 'panel'));
  const laid = layPanels(panels, placement, sun, schedules, timeline.legOfDay, optics);
  return inLongerSteps(meanPanelPower(laid, sun, skies), sun.stepsPerDay / timeline.stepsPerDay);
}

function runPlan(
  network: Network,
  model: TourModel,
  supply: Supply,
): { readonly flat: FlatMustHave; readonly record: RunRecord } {
  const flat: FlatMustHave = { step: -1, device: -1 };
  const record = createRecord(model.timeline);
  runTour(network, model.timeline, supply, 1, createState(network), flat, record);
  return { flat, record };
}

function shortfall(
  at: { readonly device: number; readonly step: number },
  network: Network,
  model: TourModel,
): Shortfall {
  return {
    device: network.devices[at.device]!.label,
    day: Math.floor(at.step / model.timeline.stepsPerDay) + 1,
  };
}

function marginOf(result: MarginResult, network: Network, model: TourModel): EnergyMargin {
  return {
    value: result.value,
    band: null,
    capped: result.capped,
    limitedBy: result.limit === null ? null : shortfall(result.limit, network, model),
  };
}

function storedCourse(record: RunRecord, network: Network, model: TourModel): StoredCourse {
  const stepsPerHour = Math.round(1 / model.timeline.stepHours);
  return {
    capacityWh: network.capacityWh.reduce((sum, wh) => sum + wh, 0),
    middleWh: Array.from(record.storedWh).filter((_, step) => (step + 1) % stepsPerHour === 0),
    lowWh: null,
    highWh: null,
  };
}

function dayLedgers(record: RunRecord, model: TourModel): readonly DayLedger[] {
  return Array.from({ length: model.timeline.days }, (_, day) => {
    const of = (name: Account): number => record.ledger[day * accounts.length + account[name]]!;
    return {
      day: day + 1,
      date: isoDateOf(noonOf(model.tour.startDate, day)),
      ...(Object.fromEntries(accounts.map((name) => [name, of(name)])) as Record<Account, number>),
    };
  });
}

function legYields(model: TourModel, supply: Supply, rides: readonly RiddenCourse[]): readonly LegYield[] {
  const { timeline, tour, places, sun } = model;
  return tour.legs.map((leg, index) => {
    const onLeg = <T>(values: ArrayLike<T>, legOf: ArrayLike<number>): T[] =>
      Array.from(values).filter((_, i) => legOf[i] === index);
    const daysWh = (watts: Float64Array): number =>
      (onLeg(watts, timeline.leg).reduce((sum, w) => sum + w, 0) * timeline.stepHours) / leg.days;
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
      panelWh: daysWh(supply.panelW),
      hubWh: daysWh(supply.hubW),
      wallNights: onLeg(timeline.wallAfterDay, timeline.legOfDay).reduce((sum, wall) => sum + wall, 0),
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
