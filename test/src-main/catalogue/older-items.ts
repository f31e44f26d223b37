import type { Item } from '../../../shared-types/item.ts';
import type { WriteDb } from '../../../src-main/catalogue/connection.ts';

/** From version 10 up to 70, when items kept the same tables: one of each kind, and a hub with a curve beside the rated one. */
export function storeOldItems(db: WriteDb): void {
  db.exec(`
    INSERT INTO items VALUES
      ('old-bank', 'bank', 'Bank', 'owned', 1, 205, 2200, 'EUR', 'rear-rack', 'Kept.'),
      ('old-cable', 'accessory', 'Cable', 'owned', 3, 20, 500, 'EUR', 'rear-rack', 'Kept.'),
      ('old-charger', 'wall-charger', 'Charger', 'owned', 1, 95, 2800, 'EUR', 'rear-rack', 'Kept.'),
      ('old-converter', 'converter', 'Converter', 'considering', 1, 90, 8600, 'EUR', 'handlebar', 'Kept.'),
      ('old-curve-hub', 'generator-hub', 'Hub, measured', 'owned', 1, 450, 0, 'CHF', 'front-wheel', 'Kept.'),
      ('old-hub', 'generator-hub', 'Hub, rated', 'considering', 1, 460, 11000, 'EUR', 'front-wheel', 'Kept.'),
      ('old-panel', 'panel', 'Panel', 'considering', 1, 560, 8400, 'EUR', 'rear-rack', 'Kept.'),
      ('old-reader', 'device', 'Reader', 'owned', 1, 205, 12000, 'EUR', 'rear-rack', 'Kept.');
    INSERT INTO banks VALUES
      ('old-bank', 'bank', NULL, 10000, 3.7, 26, '2026-03-14', 0.9, 0.92, 0.85, 0, 0.05, 2, 4);
    INSERT INTO wall_chargers VALUES ('old-charger', 'wall-charger', 30);
    INSERT INTO converters VALUES ('old-converter', 'converter', 0.78, 9);
    INSERT INTO generator_hubs VALUES
      ('old-curve-hub', 'generator-hub', 140, 9500, 'CHF', NULL, 0.4, 2, 1.53),
      ('old-hub', 'generator-hub', 150, 14000, 'EUR', 3, 0.5, 2.5, 2.155);
    INSERT INTO hub_curve_points VALUES ('old-curve-hub', 0, 8, 0.9), ('old-curve-hub', 1, 20, 3.4);
    INSERT INTO panels VALUES ('old-panel', 'panel', 20, NULL, NULL, -0.4, 48, 0.8, 80);
    INSERT INTO devices VALUES
      ('old-reader', 'device', 6.3, NULL, NULL, 0.85, 0, NULL, NULL, NULL, NULL, 1.5, 'nice-to-have');
    INSERT INTO ports VALUES
      ('old-bank', 'in', 0, 'type-c-3a', 10), ('old-bank', 'out', 0, 'bc-1.2', 7.5),
      ('old-charger', 'out', 0, 'pd', 30), ('old-converter', 'out', 0, 'bc-1.2', 5),
      ('old-panel', 'out', 0, 'type-c-3a', 15), ('old-reader', 'in', 0, 'bc-1.2', 5);
  `);
}

const nothing = (currency: string) => ({ cost: { minor: 0, currency }, massG: 0, replacesG: 0 });

const oldHubs: readonly Item[] = [
  {
    id: 'old-curve-hub',
    kind: 'generator-hub',
    label: 'Hub, measured',
    state: 'owned',
    quantity: 1,
    massG: 450,
    price: { minor: 0, currency: 'CHF' },
    mount: 'front-wheel',
    lifeYears: null,
    resale: null,
    notes: 'Kept.',
    replacesG: 140,
    rim: nothing('CHF'),
    spokes: nothing('CHF'),
    labour: { minor: 9500, currency: 'CHF' },
    power: {
      as: 'curve',
      readAt: 'hub',
      points: [
        { speedKmh: 8, powerW: 0.9 },
        { speedKmh: 20, powerW: 3.4 },
      ],
    },
    measuredYield: null,
    idleDragW10: 0.4,
    idleDragW30: 2,
    wheelCircumferenceM: 1.53,
    ratedCircumferenceM: 1.53,
  },
  {
    id: 'old-hub',
    kind: 'generator-hub',
    label: 'Hub, rated',
    state: 'considering',
    quantity: 1,
    massG: 460,
    price: { minor: 11_000, currency: 'EUR' },
    mount: 'front-wheel',
    lifeYears: null,
    resale: null,
    notes: 'Kept.',
    replacesG: 150,
    rim: nothing('EUR'),
    spokes: nothing('EUR'),
    labour: { minor: 14_000, currency: 'EUR' },
    power: { as: 'rating', ratedW: 3 },
    measuredYield: null,
    idleDragW10: 0.5,
    idleDragW30: 2.5,
    wheelCircumferenceM: 2.155,
    ratedCircumferenceM: 2.155,
  },
];

/** The items of `storeOldItems()` as they must be read today, by label. */
export const oldItems: readonly Item[] = [
  {
    id: 'old-bank',
    kind: 'bank',
    label: 'Bank',
    state: 'owned',
    quantity: 1,
    massG: 205,
    price: { minor: 2200, currency: 'EUR' },
    mount: 'rear-rack',
    lifeYears: null,
    resale: null,
    notes: 'Kept.',
    capacity: { as: 'mah', mAh: 10_000, cellV: 3.7 },
    measuredDeliverableWh: { value: 26, on: '2026-03-14' },
    health: 0.9,
    input: { standard: 'type-c-3a', powerW: 10, cable: 'c-3a' },
    outputs: [{ standard: 'bc-1.2', powerW: 7.5 }],
    efficiencyIn: 0.92,
    efficiencyOut: 0.85,
    chargesWhileServing: false,
    standbyW: 0.05,
    selfDischargePctPerMonth: 2,
    lights: 4,
  },
  {
    id: 'old-cable',
    kind: 'accessory',
    label: 'Cable',
    state: 'owned',
    quantity: 3,
    massG: 20,
    price: { minor: 500, currency: 'EUR' },
    mount: 'rear-rack',
    lifeYears: null,
    resale: null,
    notes: 'Kept.',
    forHub: false,
  },
  {
    id: 'old-charger',
    kind: 'wall-charger',
    label: 'Charger',
    state: 'owned',
    quantity: 1,
    massG: 95,
    price: { minor: 2800, currency: 'EUR' },
    mount: 'rear-rack',
    lifeYears: null,
    resale: null,
    notes: 'Kept.',
    outputs: [{ standard: 'pd', powerW: 30 }],
    totalW: 30,
  },
  {
    id: 'old-converter',
    kind: 'converter',
    label: 'Converter',
    state: 'considering',
    quantity: 1,
    massG: 90,
    price: { minor: 8600, currency: 'EUR' },
    mount: 'handlebar',
    lifeYears: null,
    resale: null,
    notes: 'Kept.',
    efficiency: 0.78,
    startSpeedKmh: 9,
    load: 'rated',
    seriesCapacitorUF: 0,
    output: { standard: 'bc-1.2', powerW: 5 },
  },
  ...oldHubs,
  {
    id: 'old-panel',
    kind: 'panel',
    label: 'Panel',
    state: 'considering',
    quantity: 1,
    massG: 560,
    price: { minor: 8400, currency: 'EUR' },
    mount: 'rear-rack',
    lifeYears: null,
    resale: null,
    notes: 'Kept.',
    ratedW: 20,
    measuredRatedW: null,
    temperatureCoefficientPctPerK: -0.4,
    noctDegC: 48,
    regulatorEfficiency: 0.8,
    startWm2: 80,
    output: { standard: 'type-c-3a', powerW: 15 },
  },
  {
    id: 'old-reader',
    kind: 'device',
    label: 'Reader',
    state: 'owned',
    quantity: 1,
    massG: 205,
    price: { minor: 12_000, currency: 'EUR' },
    mount: 'rear-rack',
    lifeYears: null,
    resale: null,
    notes: 'Kept.',
    capacity: { as: 'wh', wh: 6.3 },
    health: 0.85,
    spareBatteries: 0,
    input: { standard: 'bc-1.2', powerW: 5, cable: 'a-plug' },
    use: { as: 'day', whPerDay: 1.5 },
    pluggedW: 0,
    importance: 'nice-to-have',
  },
];
