import type { FieldMeta } from '../../../shared-types/field.ts';
import { percent } from '../../../shared-types/figures.ts';

/** Heads of the groups that hold fields; a group has no label of its own in its schema. */
const groupLabels: Readonly<Record<string, string>> = {
  price: 'Price of one',
  resale: 'Resale of one',
  rim: 'Rim',
  spokes: 'Spokes',
  cost: 'Price',
  labour: 'Wheel building, labour',
  capacity: 'Label capacity',
  input: 'Charging port',
  output: 'Outlet',
  outputs: 'Outlets',
  use: 'Use',
  energy: 'Through the meter',
  before: 'Before',
  after: 'After',
  power: 'Power',
  points: 'Measured curve',
  measuredDeliverableWh: 'Measured delivery',
  measuredRatedW: 'Measured power',
  measuredYield: 'Measured yield',
  bicycle: 'Bicycle on the road',
  legs: 'Legs',
  leftAtHome: 'Devices left at home',
  place: 'Place',
  terrain: 'Terrain and track',
  nights: 'Nights',
  wind: 'Wind',
  dayStops: 'Stops on a day',
  placement: 'Placement of the panel',
  rules: 'Rules',
  sky: 'Sky',
  risk: 'Risk',
  money: 'Money',
  wallNight: 'A night with a wall',
  frontLoad: 'Load on the front wheel',
  ahead: 'Ahead of the rear axle',
  ownShare: 'Share on the front wheel',
};

export function groupLabel(key: string): string {
  return groupWords(key) ?? key;
}

/** null for a group that has no words. */
export function groupWords(key: string): string | null {
  return groupLabels[key] ?? null;
}

const entryNames: Readonly<Record<string, (number: number) => string>> = {
  points: (number) => `Point ${number} of the curve`,
  outputs: (number) => `Outlet ${number}`,
  dayStops: (number) => `Stop ${number}`,
};

/** What an entry of the list named `key` is called, by its place from 0. */
export function entryName(key: string, place: number): string {
  return entryNames[key]?.(place + 1) ?? `${groupLabel(key)} ${place + 1}`;
}

const optionLabels: Readonly<Record<string, string>> = {
  share: 'Per cent',
  lights: 'Lights lit',
  'meter-wh': 'Watt-hours',
  'meter-mah': 'Milliampere-hours',
  wh: 'Watt-hours',
  mah: 'Milliampere-hours',
  activity: 'By activity',
  day: 'By day',
  rating: 'Rating',
  curve: 'Measured curve',
  calm: 'Calm',
  along: 'Along the road',
  around: 'From all sides alike',
};

export function optionLabel(value: string): string {
  return optionLabels[value] ?? value;
}

/** A share as its field shows it: in per cent, and so its range and its hint. */
export function inPercent(meta: FieldMeta): FieldMeta {
  const { hint, min = 0, max = 1, step = 0.01, ...rest } = meta;
  const scaled = { ...rest, unit: '%', min: min * 100, max: max * 100, step: step * 100 };
  return hint === undefined ? scaled : { ...scaled, hint: hintInPercent(hint) };
}

/** Bare shares in a hint (`about 0.92`, `1 when new`) as percentages. */
function hintInPercent(hint: string): string {
  return hint.replaceAll(/\b(?:0\.\d+|1)\b/g, (share) => percent(Number(share), { locale: 'en' }));
}
