import type { Item, ItemDraft } from '../../shared-types/item.ts';
import type { Cable, Port, PortStandard, SinkPort } from '../../shared-types/port.ts';
import { usualPlacement, usualRules, type Scenario } from '../../shared-types/scenario.ts';
import { usualFrontLoad } from '../../shared-types/front-load.ts';
import { noLimits } from '../../shared-types/limits.ts';
import { usualMoney } from '../../shared-types/money-settings.ts';
import { usualExtras, usualRisk, usualSky, type Settings } from '../../shared-types/settings.ts';
import { usualBicycle, type Leg, type NightKind, type Tour } from '../../shared-types/tour.ts';
import { demoTrack } from './demo-track.ts';

/*
 * The demo: an invented rider, tour and kit. Figures are of the size a tourer meets in shops and on scales; none is
 * taken from a product (common practice, no source).
 */

const currency = 'EUR';
const invented = 'Invented for the demo.';

const port = (standard: PortStandard, powerW: number): Port => ({ standard, powerW });
const sink = (standard: PortStandard, powerW: number, cable: Cable): SinkPort => ({
  standard,
  powerW,
  cable,
});

type CommonKey =
  'state' | 'quantity' | 'notes' | 'price' | 'lifeYears' | 'resale' | 'label' | 'massG' | 'mount';

/** What most demo items share; `euros` is the price of one. */
const item = (
  label: string,
  state: ItemDraft['state'],
  massG: number,
  euros: number,
  mount: ItemDraft['mount'],
): Pick<ItemDraft, CommonKey> => ({
  label,
  state,
  quantity: 1,
  massG,
  price: { minor: euros * 100, currency },
  lifeYears: null,
  resale: null,
  mount,
  notes: invented,
});

const devices: readonly Item[] = [
  {
    id: 'demo-phone',
    kind: 'device',
    ...item('Phone', 'owned', 190, 420, 'body'),
    capacity: { as: 'mah', mAh: 4500, cellV: 3.85 },
    health: 0.9,
    spareBatteries: 0,
    input: sink('pd', 18, 'c-3a'),
    use: { as: 'activity', ridingW: 0.25, stopW: 0.7, eveningW: 1.2, nightW: 0.08 },
    pluggedW: 0,
    importance: 'must-have',
  },
  {
    id: 'demo-navigation',
    kind: 'device',
    ...item('Navigation unit', 'owned', 115, 310, 'handlebar'),
    capacity: { as: 'mah', mAh: 1800, cellV: 3.7 },
    health: 0.95,
    spareBatteries: 0,
    input: sink('bc-1.2', 5, 'a-plug'),
    use: { as: 'activity', ridingW: 0.75, stopW: 0.3, eveningW: 0.1, nightW: 0 },
    pluggedW: 0,
    importance: 'must-have',
  },
  {
    id: 'demo-camera',
    kind: 'device',
    ...item('Camera', 'owned', 480, 700, 'handlebar'),
    lifeYears: 8,
    resale: { minor: 150_00, currency },
    capacity: { as: 'mah', mAh: 1200, cellV: 7.2 },
    health: 0.9,
    spareBatteries: 1,
    input: sink('type-c-1.5a', 7.5, 'c-3a'),
    use: { as: 'day', whPerDay: 3.5 },
    pluggedW: 0,
    importance: 'nice-to-have',
  },
  {
    id: 'demo-light',
    kind: 'device',
    ...item('Front and rear light', 'owned', 170, 80, 'handlebar'),
    capacity: { as: 'mah', mAh: 3000, cellV: 3.6 },
    health: 0.9,
    spareBatteries: 0,
    input: sink('bc-1.2', 5, 'a-plug'),
    use: { as: 'activity', ridingW: 0.4, stopW: 0, eveningW: 0.3, nightW: 0 },
    pluggedW: 0,
    importance: 'nice-to-have',
  },
  {
    id: 'demo-reader',
    kind: 'device',
    ...item('Reading tablet', 'owned', 205, 120, 'rear-rack'),
    capacity: { as: 'mah', mAh: 1700, cellV: 3.7 },
    health: 0.85,
    spareBatteries: 0,
    input: sink('bc-1.2', 5, 'a-plug'),
    use: { as: 'activity', ridingW: 0, stopW: 0, eveningW: 0.3, nightW: 0 },
    pluggedW: 0,
    importance: 'nice-to-have',
  },
];

const bankDefaults = {
  kind: 'bank',
  measuredDeliverableWh: null,
  efficiencyIn: 0.92,
  efficiencyOut: 0.85,
  chargesWhileServing: true,
  standbyW: 0,
  selfDischargePctPerMonth: 2,
  lights: 4,
} as const;

const banks: readonly Item[] = [
  {
    id: 'demo-bank-20',
    ...item('20 Ah bank, 18 W in', 'owned', 350, 45, 'rear-rack'),
    ...bankDefaults,
    capacity: { as: 'mah', mAh: 20_000, cellV: 3.7 },
    measuredDeliverableWh: { value: 60, on: '2026-03-14' },
    health: 0.95,
    input: sink('pd', 18, 'c-3a'),
    outputs: [port('pd', 20), port('bc-1.2', 7.5)],
  },
  {
    id: 'demo-bank-10',
    ...item('10 Ah bank, 10 W in', 'owned', 205, 22, 'rear-rack'),
    ...bankDefaults,
    capacity: { as: 'mah', mAh: 10_000, cellV: 3.7 },
    health: 0.9,
    input: sink('type-c-3a', 10, 'c-3a'),
    outputs: [port('bc-1.2', 7.5)],
    chargesWhileServing: false,
  },
];

const sources: readonly Item[] = [
  {
    id: 'demo-panel-20',
    kind: 'panel',
    ...item('20 W folding panel', 'considering', 560, 84, 'rear-rack'),
    ratedW: 20,
    measuredRatedW: null,
    temperatureCoefficientPctPerK: -0.4,
    noctDegC: 48,
    regulatorEfficiency: 0.8,
    startWm2: 80,
    output: port('type-c-3a', 15),
  },
  {
    id: 'demo-panel-6',
    kind: 'panel',
    ...item('6 W small panel', 'owned', 230, 40, 'rear-rack'),
    ratedW: 6,
    measuredRatedW: null,
    temperatureCoefficientPctPerK: -0.4,
    noctDegC: 48,
    regulatorEfficiency: 0.8,
    startWm2: 120,
    output: port('bc-1.2', 5),
  },
  {
    id: 'demo-hub-3',
    kind: 'generator-hub',
    ...item('3 W generator hub wheel', 'considering', 460, 110, 'front-wheel'),
    resale: { minor: 50_00, currency },
    replacesG: 150,
    rim: { cost: { minor: 45_00, currency }, massG: 520, replacesG: 480 },
    spokes: { cost: { minor: 35_00, currency }, massG: 230, replacesG: 200 },
    labour: { minor: 60_00, currency },
    power: { as: 'rating', ratedW: 3 },
    measuredYield: null,
    idleDragW10: 0.5,
    idleDragW30: 2.5,
    wheelCircumferenceM: 2.155,
    ratedCircumferenceM: 2.155,
  },
  {
    id: 'demo-converter',
    kind: 'converter',
    ...item('Hub to USB converter', 'considering', 90, 86, 'handlebar'),
    efficiency: 0.8,
    startSpeedKmh: 10,
    load: 'rated',
    seriesCapacitorUF: 0,
    output: port('bc-1.2', 5),
  },
];

const chargers: readonly Item[] = [
  {
    id: 'demo-charger-30',
    kind: 'wall-charger',
    ...item('30 W wall charger, two ports', 'owned', 95, 28, 'rear-rack'),
    outputs: [port('pd', 30), port('bc-1.2', 7.5)],
    totalW: 30,
  },
  {
    id: 'demo-cables',
    kind: 'accessory',
    ...item('Three short cables', 'owned', 60, 15, 'rear-rack'),
    forHub: false,
  },
  {
    id: 'demo-hub-cable',
    kind: 'accessory',
    ...item('Cable from hub to stem', 'considering', 35, 12, 'fork'),
    forHub: true,
  },
];

export const demoItems: readonly Item[] = [...devices, ...banks, ...sources, ...chargers];

const every = (days: number, kind: NightKind): NightKind[] => [
  ...Array.from({ length: days - 1 }, (): NightKind => 'none'),
  kind,
];

const lunch = { label: 'Lunch stop', minutes: 60, outlets: 1, chance: 0.5 };
const rest = { label: 'Long rest', minutes: 45, outlets: 0, chance: 0 };

const legs: Leg[] = [
  {
    label: 'Forest hills and vineyards',
    days: 6,
    place: { as: 'station', station: 'Tbilisi' },
    radiation: { as: 'sunshine' },
    terrain: { as: 'class', terrainClass: 'hilly' },
    wind: { as: 'calm' },
    ridingHours: 6,
    nights: { by: 'pattern', kinds: every(3, 'electric-post'), wallOutlets: 2, postOutlets: 1 },
    dayStops: [lunch],
  },
  {
    label: 'High plateau',
    days: 9,
    place: { as: 'station', station: 'Yerevan' },
    radiation: { as: 'sunshine' },
    terrain: { as: 'track', terrainClass: 'rolling', pace: 'computed', track: demoTrack },
    wind: { as: 'calm' },
    ridingHours: 7,
    nights: { by: 'pattern', kinds: every(4, 'wall'), wallOutlets: 2, postOutlets: 1 },
    dayStops: [rest],
  },
  {
    label: 'Steppe and salt lakes',
    days: 9,
    place: { as: 'coordinates', latDeg: 40.8, lonDeg: 68.4, elevationM: 280 },
    radiation: { as: 'sunshine' },
    terrain: { as: 'class', terrainClass: 'flat-paved' },
    wind: { as: 'calm' },
    ridingHours: 7,
    nights: { by: 'pattern', kinds: every(5, 'wall'), wallOutlets: 2, postOutlets: 1 },
    dayStops: [rest],
  },
];

export const demoTours: readonly Tour[] = [
  {
    id: 'demo-tour',
    label: 'Invented demo tour: hills, plateau, steppe',
    startDate: '2027-05-03',
    legs,
    leftAtHome: [],
    riderMassKg: 76,
    bicycleMassKg: 37,
    riderW: 105,
    bicycle: usualBicycle,
    notes: 'Invented: nobody rode it. Change anything, or start your own.',
  },
];

const carried = (...itemIds: string[]) => itemIds.map((itemId) => ({ itemId, quantity: 1 }));

const common = {
  placement: { ...usualPlacement, inCamp: 'flat', rackFactor: 0.4 },
  rules: usualRules,
  notes: invented,
} as const;

export const demoScenarios: readonly Scenario[] = [
  {
    id: 'demo-banks',
    label: 'Banks only',
    method: 'banks',
    kit: carried('demo-bank-20', 'demo-bank-10', 'demo-charger-30', 'demo-cables'),
    ...common,
  },
  {
    id: 'demo-panel',
    label: 'Panel + buffer bank',
    method: 'panel',
    kit: carried('demo-bank-20', 'demo-panel-20', 'demo-charger-30', 'demo-cables'),
    ...common,
  },
  {
    id: 'demo-hub',
    label: 'Generator hub',
    method: 'hub',
    kit: carried(
      'demo-bank-20',
      'demo-hub-3',
      'demo-converter',
      'demo-hub-cable',
      'demo-charger-30',
      'demo-cables',
    ),
    ...common,
  },
];

export const demoSettings: Settings = {
  currency,
  theme: 'system',
  units: 'metric',
  numberFormat: 'system',
  letterKeys: true,
  paper: 'a4',
  tourId: 'demo-tour',
  stepMinutes: '15',
  sky: usualSky,
  risk: usualRisk,
  money: usualMoney(currency),
  frontLoad: usualFrontLoad,
  preferences: {
    cost: { weight: 0.2, satisfied: 0, unacceptable: 400 },
    grams: { weight: 0.15, satisfied: 300, unacceptable: 1500 },
    frontWheelGrams: { weight: 0.1, satisfied: 0, unacceptable: 800 },
    margin: { weight: 0.55, satisfied: 0.5, unacceptable: -0.1 },
    ...usualExtras,
    limits: noLimits,
  },
};
