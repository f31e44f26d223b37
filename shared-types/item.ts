import { z } from 'zod';
import { choice, count, flag, id, quantity, share } from './field.ts';
import { converter, generatorHub } from './hub-item.ts';
import { itemCommon } from './item-common.ts';
import { measurement } from './measurement.ts';
import { port, sinkPort } from './port.ts';

export const importance = choice(
  { 'must-have': 'Must-have', 'nice-to-have': 'Nice-to-have' },
  { label: 'Importance', hint: 'The energy margin counts must-haves only.' },
);

/** A label capacity: watt-hours as printed, or milliampere-hours with the nominal voltage of the cells. */
const labelCapacity = (maxMAh: number, maxWh: number) =>
  z.discriminatedUnion(
    'as',
    [
      z.strictObject({
        as: z.literal('wh'),
        wh: quantity({ label: 'Capacity', unit: 'Wh', min: 0, max: maxWh }),
      }),
      z.strictObject({
        as: z.literal('mah'),
        mAh: quantity({ label: 'Capacity', unit: 'mAh', min: 0, max: maxMAh }),
        cellV: quantity({
          label: 'Cell voltage',
          unit: 'V',
          min: 1,
          max: 60,
          step: 0.1,
          hint: 'The nominal voltage of the cells, mostly 3.6 to 3.85 V; not the 5 V of the plug.',
        }),
      }),
    ],
    { error: 'a capacity in Wh, or in mAh with a cell voltage' },
  );
export type LabelCapacity = z.infer<ReturnType<typeof labelCapacity>>;

const mAhPerAh = 1000;

/** Label energy, Wh: as printed, or Ah x nominal cell voltage (3.7 V, not the 5 V of the plug). */
export function labelWh(capacity: LabelCapacity): number {
  return capacity.as === 'wh' ? capacity.wh : (capacity.mAh / mAhPerAh) * capacity.cellV;
}

const health = share(
  {
    label: 'Health',
    hint: 'Share of the label capacity still there; 1 when new, often 0.8 after some years.',
  },
  0.01,
);

const useW = (name: string) =>
  quantity({ label: name, unit: 'W', min: 0, max: 500, step: 0.1, hint: 'Wh per hour, which is W' });

export const deviceUse = z.discriminatedUnion(
  'as',
  [
    z.strictObject({
      as: z.literal('activity'),
      ridingW: useW('Riding'),
      stopW: useW('At stops'),
      eveningW: useW('Evening'),
      nightW: useW('Night'),
    }),
    z.strictObject({
      as: z.literal('day'),
      whPerDay: quantity({ label: 'Use a day', unit: 'Wh', min: 0, max: 5000 }),
    }),
  ],
  { error: 'use by activity in W, or a day in Wh' },
);
export type DeviceUse = z.infer<typeof deviceUse>;

const mostOutputs = 8;

const outputs = (name: string) => {
  const error = `1 to ${mostOutputs} ${name}s, each with its standard and power`;
  return z.array(port, { error }).min(1, { error }).max(mostOutputs, { error });
};

const device = z.strictObject({
  kind: z.literal('device'),
  ...itemCommon,
  capacity: labelCapacity(60_000, 250),
  health,
  spareBatteries: count({ label: 'Spare batteries', min: 0, max: 20 }),
  input: sinkPort,
  use: deviceUse,
  pluggedW: quantity({
    label: 'Extra draw while plugged in',
    unit: 'W',
    min: 0,
    max: 20,
    step: 0.1,
    hint: 'Drawn on top while it is charged in use: a navigation unit that lights up on the cable. Mostly 0.',
  }),
  importance,
});

const bank = z.strictObject({
  kind: z.literal('bank'),
  ...itemCommon,
  capacity: labelCapacity(300_000, 1100),
  measuredDeliverableWh: measurement(
    quantity({
      label: 'Measured delivery',
      unit: 'Wh',
      min: 0,
      max: 1100,
      hint: 'Full to empty through a meter at the plug. Used instead of the label when given.',
    }),
  ),
  health,
  input: sinkPort,
  outputs: outputs('outlet'),
  efficiencyIn: share({ label: 'Efficiency in', hint: 'Stored per Wh at the plug; about 0.92.' }, 0.3),
  efficiencyOut: share({ label: 'Efficiency out', hint: 'At the plug per Wh stored; about 0.85.' }, 0.3),
  chargesWhileServing: flag({ label: 'Charges while it serves', hint: 'Can take and give at once.' }),
  standbyW: quantity({ label: 'Standby draw', unit: 'W', min: 0, max: 5, step: 0.01 }),
  selfDischargePctPerMonth: quantity({ label: 'Self-discharge', unit: '% a month', min: 0, max: 50 }),
  lights: count({
    label: 'Indicator lights',
    min: 0,
    max: 100,
    hint: 'Most have four; 100 for a display in %.',
  }),
});

const panel = z.strictObject({
  kind: z.literal('panel'),
  ...itemCommon,
  ratedW: quantity({ label: 'Rated power', unit: 'W', min: 0.1, max: 500 }),
  measuredRatedW: measurement(
    quantity({
      label: 'Measured power',
      unit: 'W',
      min: 0.1,
      max: 500,
      hint: 'At the plug under full sun, scaled to 1000 W/m² and to cells at 25 °C. Used instead of the rating when given.',
    }),
  ),
  temperatureCoefficientPctPerK: quantity({
    label: 'Temperature coefficient',
    unit: '%/K',
    min: -1,
    max: 0,
    step: 0.01,
    hint: 'Crystalline silicon −0.5 to −0.2.',
  }),
  noctDegC: quantity({
    label: 'Nominal operating cell temperature',
    unit: '°C',
    min: 20,
    max: 90,
    hint: 'About 45; higher when nothing cools the back.',
  }),
  regulatorEfficiency: share(
    { label: 'Regulator efficiency', hint: 'Plug per W of the cells; about 0.85.' },
    0.3,
  ),
  startWm2: quantity({
    label: 'Starts at',
    unit: 'W/m²',
    min: 0,
    max: 500,
    hint: 'Below this light the regulator gives nothing.',
  }),
  output: port,
});

const wallCharger = z.strictObject({
  kind: z.literal('wall-charger'),
  ...itemCommon,
  outputs: outputs('port'),
  totalW: quantity({ label: 'All ports together', unit: 'W', min: 0.5, max: 500 }),
});

const accessory = z.strictObject({
  kind: z.literal('accessory'),
  ...itemCommon,
  forHub: flag({
    label: 'Only for the generator hub',
    hint: 'Counted in what the hub really costs.',
  }),
});

/** The schema of each kind of item; `kind` tells them apart. A new kind starts with a new entry here. */
export const itemKinds = {
  device,
  bank,
  panel,
  'generator-hub': generatorHub,
  converter,
  'wall-charger': wallCharger,
  accessory,
} as const;
export type ItemKind = keyof typeof itemKinds;

export const itemKindNames: Readonly<Record<ItemKind, { one: string; many: string }>> = {
  device: { one: 'Device', many: 'Devices' },
  bank: { one: 'Bank', many: 'Banks' },
  panel: { one: 'Panel', many: 'Panels' },
  'generator-hub': { one: 'Generator hub', many: 'Generator hubs' },
  converter: { one: 'Converter', many: 'Converters' },
  'wall-charger': { one: 'Wall charger', many: 'Wall chargers' },
  accessory: { one: 'Cable or other', many: 'Cables and other' },
};

/** An item as the rider fills it in; the catalogue adds its id. */
export const itemDraft = z.discriminatedUnion(
  'kind',
  [device, bank, panel, generatorHub, converter, wallCharger, accessory],
  { error: `a kind, one of: ${Object.keys(itemKinds).join(', ')}` },
);
export type ItemDraft = z.infer<typeof itemDraft>;
export type ItemDraftOf<K extends ItemKind> = Extract<ItemDraft, { kind: K }>;

export type Item = ItemDraft & { readonly id: string };
export type ItemOf<K extends ItemKind> = Extract<Item, { kind: K }>;

export { id as itemId };
