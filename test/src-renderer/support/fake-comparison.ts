import type {
  Comparison,
  DayLedger,
  DeviceLedger,
  ScenarioResult,
  ScoredRow,
} from '../../../shared-types/comparison.ts';
import type { Item } from '../../../shared-types/item.ts';
import { toMajor } from '../../../shared-types/money.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import {
  countedCriteria,
  type Criterion,
  type Preferences,
  type Settings,
} from '../../../shared-types/settings.ts';
import { tourDays, type Tour } from '../../../shared-types/tour.ts';
import { scoredRow } from '../../support/score-fixture.ts';
import { airFixture } from '../../support/air-fixture.ts';
import { stopRulesFixture } from '../../support/stop-rules-fixture.ts';

/** Demand the fake gives each device, Wh a day: round, so that a test can tell what a change must do. */
const whPerDevice = 6;
const day = 24 * 3_600_000;

function dateAfter(start: string, days: number): string {
  return new Date(Date.parse(`${start}T00:00:00Z`) + days * day).toISOString().slice(0, 10);
}

function dayOf(tour: Tour, index: number, demand: number, supply: ScenarioResult['method']): DayLedger {
  const wall = index % 4 === 3 ? demand * 2.6 : 0;
  const swing = 0.55 + 0.4 * Math.sin(index * 1.7);
  const panel = supply === 'panel' ? demand * swing : 0;
  const hub = supply === 'hub' ? demand * 0.6 : 0;
  const unserved = supply === 'banks' && index % 9 === 6 ? demand * 0.3 : 0;
  const used = demand - unserved;
  const lost = (wall + panel + hub) * 0.15;
  return {
    day: index + 1,
    date: dateAfter(tour.startDate, index),
    demand,
    used,
    unserved,
    wall,
    wallToBanks: Math.max(0, wall - used),
    panel,
    hub,
    lost,
    spilled: 0,
    stored: wall + panel + hub - used - lost,
  };
}

/** Every device takes an equal part, all that no wall gives directly from a bank filled by the day's other sources. */
function devicesOf(devices: readonly Item[], days: readonly DayLedger[]): readonly DeviceLedger[] {
  return devices.map((item) => ({
    device: item.label,
    mustHave: item.kind === 'device' && item.importance === 'must-have',
    days: days.map((each) => {
      const part = 1 / devices.length;
      const wallDirect = (each.wall - each.wallToBanks) * part;
      const rest = each.used * part - wallDirect;
      const panel = Math.min(rest, each.panel * part);
      const hub = Math.min(rest - panel, each.hub * part);
      const start = rest - panel - hub;
      return {
        ...{ demand: each.demand * part, unserved: each.unserved * part },
        ...{ wallDirect, wallThroughBank: 0, panel, hub, start },
      };
    }),
  }));
}

function resultOf(scenario: Scenario, tour: Tour, items: readonly Item[], currency: string): ScenarioResult {
  const devices = items.filter(
    ({ id, kind, state }) => kind === 'device' && state === 'owned' && !tour.leftAtHome.includes(id),
  );
  const demand = devices.length * whPerDevice;
  const lines = scenario.kit.flatMap(({ itemId, quantity }) => {
    const item = items.find(({ id }) => id === itemId);
    return item === undefined ? [] : [{ item, quantity }];
  });
  const toBuy = lines.filter(({ item }) => item.state !== 'owned');
  const minor = (some: typeof lines): number =>
    some.reduce((sum, { item, quantity }) => sum + item.price.minor * quantity, 0);
  const carriedG = lines.reduce((sum, { item, quantity }) => sum + item.massG * quantity, 0);
  const frontWheelG = lines.reduce(
    (sum, { item }) => sum + (item.mount === 'front-wheel' ? item.massG : 0),
    0,
  );
  const strength = { banks: 24, panel: 39, hub: 40, mix: 45 }[scenario.method];
  const value = demand === 0 ? 2 : strength / demand - 1;
  const short = value < 0 ? { device: devices[0]?.label ?? 'Phone', day: 7, earliestDay: 4 } : null;
  const days = Array.from({ length: tourDays(tour) }, (_, i) => dayOf(tour, i, demand, scenario.method));
  const middleWh = days.flatMap((_, i) =>
    Array.from({ length: 24 }, (_hour, h) => Math.max(0, 140 - ((i * 24 + h) % 96) * (1.6 - value))),
  );
  // Wilson 1927, 95 %, for 0 and 40 of 200 histories, by hand.
  const risk =
    short === null ? { share: 0, low: 0, high: 0.0188 } : { share: 0.2, low: 0.1505, high: 0.2609 };
  const lowWh = middleWh.map((wh) => Math.max(0, wh - 15));
  const highWh = middleWh.map((wh) => Math.min(140, wh + 15));
  return {
    id: scenario.id,
    label: scenario.label,
    method: scenario.method,
    carries: lines.map(({ item }) => item.label).join(', '),
    values: {
      cost: toMajor({ minor: minor(toBuy), currency }),
      grams: carriedG,
      frontWheelGrams: frontWheelG,
      margin: value,
      ...{ risk: short === null ? 0 : 0.5, minutesLost: 4, daysWithoutWall: short === null ? 9 : 3 },
    },
    cost: {
      toBuy: { minor: minor(toBuy), currency },
      building: { minor: 0, currency },
      whole: { minor: minor(lines), currency },
      resale: { minor: 0, currency },
      perTourDay: { minor: 35, currency },
      paidNights: null,
      notConverted: [],
      apart: { building: [], resale: [], perTourDay: [] },
      lines: lines.map(({ item, quantity }) => ({
        itemId: item.id,
        label: item.label,
        quantity,
        owned: item.state === 'owned',
        whole: { minor: item.price.minor * quantity, currency },
      })),
    },
    mass: {
      carriedG,
      frontWheelG,
      lines: lines.map(({ item, quantity }) => ({
        itemId: item.id,
        label: item.label,
        kind: item.kind,
        quantity,
        mount: item.mount,
        netG: item.massG * quantity,
        frontWheelG: item.mount === 'front-wheel' ? item.massG : 0,
      })),
    },
    hubCost: null,
    air: airFixture(),
    margin: {
      value,
      capped: demand === 0,
      limitedBy: demand === 0 ? null : { device: 'Phone', day: 9 },
      usual: value + 0.2,
      usualCapped: demand === 0,
    },
    risk,
    firstShort: short,
    reserveWh: { p10: Math.min(...lowWh), p50: Math.min(...middleWh), p90: Math.min(...highWh) },
    spilledShare: 0,
    stored: { capacityWh: 140, pointsPerDay: 24, lowWh, middleWh, highWh },
    days,
    devices: devicesOf(devices, days),
    wallOrder: { other: 'banks-first', lostWh: 12, unservedWh: 0 },
    legs: tour.legs.map((leg) => ({
      leg: leg.label,
      days: leg.days,
      station: 'Yerevan',
      stationKm: 12,
      stationHigherM: 212,
      notes: [],
      radiationKWhM2: 5.4,
      dayLengthH: 14,
      panelWh: scenario.method === 'panel' ? 28 : 0,
      hubWh: scenario.method === 'hub' ? 15 : 0,
      wallNights: 2,
      risk,
      speedKmh: 17.2,
      massMinutes: 2,
      dragMinutes: scenario.method === 'hub' ? 4 : 0,
      offMinutes: scenario.method === 'hub' ? 1 : 0,
    })),
    stopRules: stopRulesFixture({
      leg: tour.legs[0]!.label,
      mustHaveWhPerDay: demand,
      banks: [{ bank: 'Invented bank', fullWh: 60 }],
      sourcesWh: 0,
    }),
    assumptions: [],
  };
}

/** Ranks by the weighted margin and cost alone; enough to show that weights reach the ranking. */
export function fakeScores(
  results: readonly ScenarioResult[],
  preferences: Preferences,
): readonly ScoredRow[] {
  const counted = countedCriteria(preferences);
  const scored = results.map((result) => {
    const part = (name: Criterion): number => {
      const { satisfied, unacceptable } = preferences[name];
      const share = (result.values[name] - unacceptable) / (satisfied - unacceptable);
      return Math.min(1, Math.max(0, share));
    };
    const score = counted.reduce((sum, name) => sum + part(name) * preferences[name].weight, 0);
    const parts = Object.fromEntries(counted.map((name) => [name, part(name)]));
    return scoredRow(result.id, score, { parts });
  });
  return scored
    .toSorted((one, other) => other.score - one.score)
    .map((row, i) => ({ ...row, rank: i + 1, topsis: { closeness: row.score, rank: i + 1 } }));
}

/** A comparison of the right shape whose figures follow the catalogue simply and visibly; no model stands behind it. */
export function fakeComparison(
  tour: Tour,
  scenarios: readonly Scenario[],
  items: readonly Item[],
  { currency, preferences }: Settings,
): Comparison {
  const results = scenarios.map((scenario) => resultOf(scenario, tour, items, currency));
  const scores = fakeScores(results, preferences);
  const best = scores[0];
  return {
    tour: {
      id: tour.id,
      label: tour.label,
      summary: `${tour.label}, ${tourDays(tour)} days from ${tour.startDate}`,
      startDate: tour.startDate,
      days: tourDays(tour),
      demandWhPerDay: whPerDevice,
    },
    currency,
    ...{ ownsNoKit: false, remedies: null },
    histories: 200,
    seed: 1,
    confidence: 0.9,
    advice: {
      answer: `Take ${results.find(({ id }) => id === best?.id)?.label ?? 'nothing'}. It carries 31 % more use than you plan, weighs 610 g, and costs 84 to complete.`,
      why: 'Banks alone run a must-have flat on day 7. The hub is as safe as the panel, but costs 336 and puts 540 g on the front wheel.',
      notes: [],
    },
    scenarios: scores.map(({ id }) => results.find((result) => result.id === id)!),
    scores,
    assumptions: [
      { name: 'Sky', value: 'one mean day a month', basis: 'default', source: 'common practice' },
      {
        name: '20 Ah bank, 18 W in',
        value: '60 Wh',
        basis: 'measured',
        source: 'your reading of 2026-03-14',
      },
    ],
    cautions: [
      'Charge lithium cells between 0 and 45 °C, never unattended, never damaged. Keep the bank in the shade behind the panel.',
      'These are estimates, not guarantees: carry a reserve.',
    ],
  };
}
