import type { During, MeterEnergy, ReadingDraft, ReadingKind } from '../../shared-types/reading.ts';
import type { StoreState } from '../../shared-types/stop-plan.ts';

/** A reading in its row: the figures its form has, and null for the others. */
export interface ReadingColumns {
  readonly item_id: string;
  readonly form: ReadingKind;
  readonly taken_on: string;
  readonly note: string;
  readonly before_share: number | null;
  readonly before_lit: number | null;
  readonly after_share: number | null;
  readonly after_lit: number | null;
  readonly counted_wh: number | null;
  readonly counted_mah: number | null;
  readonly meter_v: number | null;
  readonly hours: number | null;
  readonly distance_km: number | null;
  readonly during: During | null;
}

const empty = {
  before_share: null,
  before_lit: null,
  after_share: null,
  after_lit: null,
  counted_wh: null,
  counted_mah: null,
  meter_v: null,
  hours: null,
  distance_km: null,
  during: null,
} as const;

export function readingColumns(draft: ReadingDraft): ReadingColumns {
  const { itemId, as, on, note } = draft;
  return { ...empty, item_id: itemId, form: as, taken_on: on, note, ...figuresOf(draft) };
}

function figuresOf(draft: ReadingDraft): Partial<ReadingColumns> {
  switch (draft.as) {
    case 'charge':
      return after(draft.state);
    case 'delivery':
    case 'intake':
      return { ...before(draft.before), ...after(draft.after), ...counted(draft.energy) };
    case 'use':
      return {
        before_share: draft.beforeShare,
        after_share: draft.afterShare,
        hours: draft.hours,
        during: draft.during,
      };
    case 'sun':
      return { ...counted(draft.energy), hours: draft.hours };
    case 'ride':
      return { ...counted(draft.energy), hours: draft.hours, distance_km: draft.distanceKm };
  }
}

function before(state: StoreState): Partial<ReadingColumns> {
  return state.as === 'share' ? { before_share: state.share } : { before_lit: state.lit };
}

function after(state: StoreState): Partial<ReadingColumns> {
  return state.as === 'share' ? { after_share: state.share } : { after_lit: state.lit };
}

function counted(energy: MeterEnergy): Partial<ReadingColumns> {
  return energy.as === 'meter-wh'
    ? { counted_wh: energy.wh }
    : { counted_mah: energy.mAh, meter_v: energy.volts };
}

export function readingOf(row: ReadingColumns): ReadingDraft {
  const common = { itemId: row.item_id, on: row.taken_on, note: row.note };
  switch (row.form) {
    case 'charge':
      return { as: 'charge', ...common, state: afterOf(row) };
    case 'delivery':
    case 'intake':
      return { as: row.form, ...common, energy: energyOf(row), before: beforeOf(row), after: afterOf(row) };
    case 'use':
      return {
        as: 'use',
        ...common,
        beforeShare: given(row.before_share),
        afterShare: given(row.after_share),
        hours: given(row.hours),
        during: given(row.during),
      };
    case 'sun':
      return { as: 'sun', ...common, energy: energyOf(row), hours: given(row.hours) };
    case 'ride':
      return {
        as: 'ride',
        ...common,
        energy: energyOf(row),
        hours: given(row.hours),
        distanceKm: row.distance_km,
      };
  }
}

function beforeOf({ before_share, before_lit }: ReadingColumns): StoreState {
  return stateOf(before_share, before_lit);
}

function afterOf({ after_share, after_lit }: ReadingColumns): StoreState {
  return stateOf(after_share, after_lit);
}

function stateOf(share: number | null, lit: number | null): StoreState {
  return share === null ? { as: 'lights', lit: given(lit) } : { as: 'share', share };
}

function energyOf({ counted_wh, counted_mah, meter_v }: ReadingColumns): MeterEnergy {
  return counted_wh === null
    ? { as: 'meter-mah', mAh: given(counted_mah), volts: given(meter_v) }
    : { as: 'meter-wh', wh: counted_wh };
}

/** The constraints of the table see to it that each form has its figures. */
function given<T>(value: T | null): T {
  if (value === null) throw new Error('The catalogue has a reading that lacks a figure of its form.');
  return value;
}
