import type { KeptEstimate } from '../../../shared-types/field-log.ts';
import type { ReadingDraft } from '../../../shared-types/reading.ts';

const bank = { itemId: 'demo-bank-20', on: '2027-05-03', note: 'in the shade' };

/** A reading of each form, and of each way to say how full and how much. */
export const someReadings: readonly ReadingDraft[] = [
  { as: 'charge', ...bank, state: { as: 'lights', lit: 3 } },
  { as: 'charge', ...bank, itemId: 'demo-phone', state: { as: 'share', share: 0.62 } },
  {
    as: 'delivery',
    ...bank,
    energy: { as: 'meter-wh', wh: 41.5 },
    before: { as: 'share', share: 1 },
    after: { as: 'lights', lit: 1 },
  },
  {
    as: 'intake',
    ...bank,
    energy: { as: 'meter-mah', mAh: 15_000, volts: 5.1 },
    before: { as: 'lights', lit: 0 },
    after: { as: 'share', share: 1 },
  },
  {
    as: 'use',
    ...bank,
    itemId: 'demo-phone',
    beforeShare: 0.9,
    afterShare: 0.5,
    hours: 7.5,
    during: 'riding',
  },
  { as: 'sun', ...bank, itemId: 'demo-panel-20', energy: { as: 'meter-wh', wh: 30 }, hours: 2.5 },
  {
    as: 'ride',
    ...bank,
    itemId: 'demo-hub-3',
    energy: { as: 'meter-wh', wh: 12 },
    hours: 5,
    distanceKm: 74.5,
  },
  {
    as: 'ride',
    ...bank,
    itemId: 'demo-hub-3',
    energy: { as: 'meter-wh', wh: 9 },
    hours: 4,
    distanceKm: null,
  },
];

export const someEstimate: KeptEstimate = {
  itemId: 'demo-bank-20',
  measure: 'bank-delivery',
  value: 55,
  low: 51.5,
  high: 58.75,
  readings: 4,
  on: '2027-05-04',
};
