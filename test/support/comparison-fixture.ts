import type {
  Assumption,
  Comparison,
  Cost,
  DayLedger,
  EnergyMargin,
  FlatRisk,
  LegYield,
  Mass,
  ScenarioResult,
  ScoredRow,
  Shortfall,
} from '../../shared-types/comparison.ts';
import { toMajor } from '../../shared-types/money.ts';
import type { Method } from '../../shared-types/scenario.ts';
import type { StopRules } from '../../shared-types/stop-rules.ts';
import { airFixture } from './air-fixture.ts';
import {
  courseFixture,
  devicesFixture,
  fixtureDays,
  fixtureDemandWhPerDay,
  fixtureStart,
  ledgerFixture,
  type SupplyFixture,
} from './energy-fixture.ts';
import {
  costLine,
  fixtureCurrency,
  hubCostFixture,
  kitFixture,
  massLine,
  type KitLineFixture,
} from './kit-fixture.ts';
import { scoredRow } from './score-fixture.ts';
import { stopRulesFixture } from './stop-rules-fixture.ts';

/** An invented tour and kit: believable in size and consistent in its sums, but no output of the model. */
interface MethodFixture {
  readonly label: string;
  readonly carries: string;
  readonly supply: SupplyFixture;
  readonly margin: number;
  /** The margin in half of the histories. */
  readonly usual: number;
  readonly limitedBy: Shortfall;
  readonly risk: FlatRisk;
}

/** With their intervals by Wilson 1927, 95 %, reckoned by hand for 0 and 116 of 200 histories. */
const noRisk: FlatRisk = { share: 0, low: 0, high: 0.0188 };
const largeRisk: FlatRisk = { share: 0.58, low: 0.5107, high: 0.6463 };

const noSupply = { wallWh: 0, wallEvery: 5, panelWh: 0, hubWh: 0 };

const methodFixtures: Readonly<Record<Method, MethodFixture>> = {
  banks: {
    label: 'Two banks',
    carries: 'two 20 Ah banks, 30 W wall charger',
    supply: { ...noSupply, capacityWh: 183, wallWh: 176, lossShare: 0.17 },
    margin: 0.07,
    usual: 0.19,
    limitedBy: { device: 'Navigation unit', day: 14 },
    risk: noRisk,
  },
  panel: {
    label: 'Panel and buffer bank',
    carries: '20 W panel, 20 Ah bank',
    supply: { ...noSupply, capacityWh: 90, wallWh: 84, panelWh: 15, lossShare: 0.15 },
    margin: -0.18,
    usual: -0.04,
    limitedBy: { device: 'Phone', day: 9 },
    risk: largeRisk,
  },
  hub: {
    label: 'Generator hub',
    carries: '3 W hub in the front wheel, 10 Ah bank',
    supply: { ...noSupply, capacityWh: 72, wallWh: 44, hubWh: 29, lossShare: 0.12 },
    margin: 0.31,
    usual: 0.44,
    limitedBy: { device: 'Phone', day: 19 },
    risk: noRisk,
  },
  mix: {
    label: 'Hub with a panel',
    carries: '3 W hub, 20 W panel, 10 Ah bank',
    supply: { ...noSupply, capacityWh: 72, wallWh: 30, hubWh: 29, panelWh: 17, lossShare: 0.13 },
    margin: 0.62,
    usual: 0.91,
    limitedBy: { device: 'Camera', day: 15 },
    risk: noRisk,
  },
};

function costOf(kit: readonly KitLineFixture[]): Cost {
  const sum = (lines: readonly KitLineFixture[]) => ({
    minor: lines.reduce((total, line) => total + line.wholeMinor, 0),
    currency: fixtureCurrency,
  });
  return {
    toBuy: sum(kit.filter((line) => !line.owned)),
    building: sum([]),
    whole: sum(kit),
    resale: sum([]),
    perTourDay: { minor: 35, currency: fixtureCurrency },
    paidNights: { nights: 4, cost: null },
    notConverted: [],
    apart: { building: [], resale: [], perTourDay: [] },
    lines: kit.map(costLine),
  };
}

function massOf(kit: readonly KitLineFixture[]): Mass {
  return {
    carriedG: kit.reduce((total, line) => total + line.netG, 0),
    frontWheelG: kit.reduce((total, line) => total + line.frontWheelG, 0),
    lines: kit.map(massLine),
  };
}

/** By hand from Wilson 1927, 95 %: 22 of 200 histories. What falls short does so on the passes, on the coast in a few as well. */
const someRisk: FlatRisk = { share: 0.11, low: 0.0738, high: 0.1609 };

function legsOf({ panelWh, hubWh }: SupplyFixture, risk: FlatRisk): readonly LegYield[] {
  const coast = {
    leg: 'Coast',
    days: 14,
    station: 'Invented harbour',
    stationKm: 22,
    stationHigherM: -40,
    notes: [],
    radiationKWhM2: 5.4,
    dayLengthH: 15.1,
    panelWh: panelWh * 1.1,
    hubWh: hubWh * 1.05,
    wallNights: 3,
    risk: risk.share === 0 ? noRisk : someRisk,
    speedKmh: 18.2,
    massMinutes: 1.2,
    dragMinutes: hubWh > 0 ? 3.4 : 0,
    offMinutes: hubWh > 0 ? 0.9 : 0,
  };
  return [coast, { ...coast, leg: 'Passes', days: 10, panelWh: panelWh * 0.86, hubWh: hubWh * 0.93, risk }];
}

/** What a full bank of the kits gives at its plug, Wh. */
const fullBankWh = new Map([
  ['bank-20', 61],
  ['bank-20-fast', 63],
  ['bank-10', 31],
]);
/** Nine tenths of the use are must-haves, and a device stores 0.88 of what is plugged in. */
const mustHaveWhPerDay = (fixtureDemandWhPerDay * 0.9) / 0.88;
/** Of what panel and hub give, a bank passes on so much. */
const throughBank = 0.78;

function stopRulesOf(method: Method, { panelWh, hubWh }: SupplyFixture): StopRules {
  const banks = kitFixture[method].flatMap(({ itemId, label, kind }) =>
    kind === 'bank' ? [{ bank: label, fullWh: fullBankWh.get(itemId)! }] : [],
  );
  const sourcesWh = (panelWh * 0.86 + hubWh * 0.93) * throughBank;
  return stopRulesFixture({ leg: 'Passes', mustHaveWhPerDay, banks, sourcesWh });
}

const assumptionsFixture: readonly Assumption[] = [
  { name: 'Efficiency out of a bank', value: '0.85', basis: 'default', source: 'common practice' },
  { name: 'Rack factor', value: '0.6', basis: 'rider', source: 'the scenario' },
  { name: '20 Ah bank, 18 W in', value: '61 Wh', basis: 'measured', source: 'meter, 2027-02-11' },
  { name: '20 W folding panel', value: '20 W', basis: 'label', source: 'its label' },
  { name: 'Hours of sunshine', value: '6.8 h', basis: 'default', source: 'Invented harbour, monthly means' },
];

const cautionsFixture = [
  'Lithium cells: do not charge damaged ones, below freezing, or unattended.',
  'Keep a bank in the shade behind the panel.',
  'Banks fly in the cabin only, terminals protected; ask the airline, rules change.',
  'Have a generator wheel built and its axle checked by a qualified mechanic.',
];

function spilledShare(days: readonly DayLedger[]): number {
  const givenWh = days.reduce((sum, { panel, hub }) => sum + panel + hub, 0);
  return givenWh === 0 ? 0 : days.reduce((sum, { spilled }) => sum + spilled, 0) / givenWh;
}

/** One scenario of the given method; whatever `changes` names replaces what was there. */
export function scenarioFixture(method: Method, changes: Partial<ScenarioResult> = {}): ScenarioResult {
  const { label, carries, supply, ...fixture } = methodFixtures[method];
  const cost = changes.cost ?? costOf(kitFixture[method]);
  const mass = changes.mass ?? massOf(kitFixture[method]);
  const margin: EnergyMargin = changes.margin ?? {
    value: fixture.margin,
    capped: false,
    limitedBy: fixture.limitedBy,
    usual: fixture.usual,
    usualCapped: false,
  };
  const days = ledgerFixture(supply);
  const stored = courseFixture(supply.capacityWh, days);
  return {
    id: `scenario-${method}`,
    label,
    method,
    carries,
    values: {
      cost: toMajor(cost.toBuy),
      grams: mass.carriedG,
      frontWheelGrams: mass.frontWheelG,
      margin: margin.value,
      risk: fixture.risk.share,
      minutesLost: supply.hubWh > 0 ? 4.6 : 1.2,
      daysWithoutWall: fixture.risk.share === 0 ? supply.wallEvery + 1 : supply.wallEvery - 1,
    },
    cost,
    mass,
    hubCost: supply.hubWh > 0 ? hubCostFixture : null,
    air: airFixture(),
    margin,
    risk: fixture.risk,
    firstShort:
      fixture.risk.share === 0 ? null : { ...fixture.limitedBy, earliestDay: fixture.limitedBy.day - 3 },
    reserveWh: {
      p10: Math.min(...stored.lowWh),
      p50: Math.min(...stored.middleWh),
      p90: Math.min(...stored.highWh),
    },
    spilledShare: spilledShare(days),
    stored,
    days,
    devices: devicesFixture(supply.capacityWh, days),
    wallOrder: { other: 'banks-first', lostWh: 12, unservedWh: 3 },
    legs: legsOf(supply, fixture.risk),
    stopRules: stopRulesOf(method, supply),
    assumptions: [],
    ...changes,
  };
}

/** Scores that fall by the same step from one scenario to the next, in the order given. */
function scoresOf(scenarios: readonly ScenarioResult[]): readonly ScoredRow[] {
  const best = 0.74;
  const step = 0.11;
  return scenarios.map(({ id }, index) => {
    const score = best - step * index;
    return scoredRow(id, score, { rank: index + 1, topsis: { closeness: score, rank: index + 1 } });
  });
}

/** A finished comparison of hub, banks and panel over 24 days; `changes` replace whole fields, scores follow. */
export function comparisonFixture(changes: Partial<Comparison> = {}): Comparison {
  const scenarios = changes.scenarios ?? [
    scenarioFixture('hub'),
    scenarioFixture('banks'),
    scenarioFixture('panel'),
  ];
  return {
    tour: {
      id: 'tour-1',
      label: 'Coast and passes',
      summary: '24 days from 3 May: 14 along the coast, 10 over the passes; a wall every fifth night',
      startDate: fixtureStart,
      days: fixtureDays,
      demandWhPerDay: fixtureDemandWhPerDay,
    },
    currency: fixtureCurrency,
    ...{ ownsNoKit: false, remedies: null },
    histories: 200,
    seed: 1,
    confidence: 0.9,
    advice: {
      answer: 'Take the generator hub.',
      why: 'It carries every must-have with 31 % in hand; the panel falls short on the first dull days.',
      notes: ['The banks are the cheapest, but need a wall every fifth night'],
    },
    scores: scoresOf(scenarios),
    assumptions: assumptionsFixture,
    cautions: cautionsFixture,
    ...changes,
    scenarios,
  };
}
