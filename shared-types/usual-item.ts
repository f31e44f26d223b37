import type { ItemDraftOf, ItemKind } from './item.ts';
import { usualCable, type Port, type PortStandard, type SinkPort } from './port.ts';

/*
 * A usual item of each kind: what a form starts with, and what an empty cell of a CSV stands for, so that a rider who knows
 * only the label can leave the rest (common practice, no source).
 */

/** ISO 4217's code for "no currency": for whoever asks for a usual item and not for what it costs. */
export const noCurrency = 'XXX';

const port = (standard: PortStandard, powerW: number): Port => ({ standard, powerW });
const sink = (standard: PortStandard, powerW: number): SinkPort => {
  const own = port(standard, powerW);
  return { ...own, cable: usualCable(own) };
};

function common(currency: string) {
  return {
    label: '',
    state: 'owned',
    quantity: 1,
    massG: 100,
    price: { minor: 0, currency },
    lifeYears: null,
    resale: null,
    mount: 'rear-rack',
    notes: '',
  } as const;
}

/** A 622 mm rim with a tyre of 32 mm: pi x 0.686 m. */
const usualCircumferenceM = 2.155;

type Usual = { readonly [K in ItemKind]: (currency: string) => ItemDraftOf<K> };

const usual: Usual = {
  device: (currency) => ({
    kind: 'device',
    ...common(currency),
    mount: 'handlebar',
    capacity: { as: 'mah', mAh: 3000, cellV: 3.7 },
    health: 0.9,
    spareBatteries: 0,
    input: sink('bc-1.2', 7.5),
    use: { as: 'activity', ridingW: 0.5, stopW: 0.5, eveningW: 0.5, nightW: 0 },
    pluggedW: 0,
    importance: 'must-have',
  }),
  bank: (currency) => ({
    kind: 'bank',
    ...common(currency),
    massG: 200,
    capacity: { as: 'mah', mAh: 10_000, cellV: 3.7 },
    measuredDeliverableWh: null,
    health: 1,
    input: sink('type-c-3a', 15),
    outputs: [port('bc-1.2', 7.5)],
    efficiencyIn: 0.92,
    efficiencyOut: 0.85,
    chargesWhileServing: false,
    standbyW: 0,
    selfDischargePctPerMonth: 2,
    lights: 4,
  }),
  panel: (currency) => ({
    kind: 'panel',
    ...common(currency),
    massG: 500,
    ratedW: 15,
    measuredRatedW: null,
    temperatureCoefficientPctPerK: -0.4,
    noctDegC: 48,
    regulatorEfficiency: 0.85,
    startWm2: 100,
    output: port('type-c-3a', 15),
  }),
  'generator-hub': (currency) => ({
    kind: 'generator-hub',
    ...common(currency),
    mount: 'front-wheel',
    massG: 450,
    replacesG: 150,
    rim: { cost: { minor: 0, currency }, massG: 0, replacesG: 0 },
    spokes: { cost: { minor: 0, currency }, massG: 0, replacesG: 0 },
    labour: { minor: 0, currency },
    power: { as: 'rating', ratedW: 3 },
    measuredYield: null,
    idleDragW10: 0.5,
    idleDragW30: 2.5,
    wheelCircumferenceM: usualCircumferenceM,
    ratedCircumferenceM: usualCircumferenceM,
  }),
  converter: (currency) => ({
    kind: 'converter',
    ...common(currency),
    mount: 'handlebar',
    massG: 80,
    efficiency: 0.8,
    startSpeedKmh: 10,
    load: 'rated',
    seriesCapacitorUF: 0,
    output: port('bc-1.2', 5),
  }),
  'wall-charger': (currency) => ({
    kind: 'wall-charger',
    ...common(currency),
    outputs: [port('pd', 20)],
    totalW: 20,
  }),
  accessory: (currency) => ({ kind: 'accessory', ...common(currency), massG: 20, forHub: false }),
};

/** The usual item of a kind, its prices 0 in the currency given and its label empty. */
export function usualItem<K extends ItemKind>(kind: K, currency: string): ItemDraftOf<K> {
  return usual[kind](currency);
}
