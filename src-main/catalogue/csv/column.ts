import type { ItemKind } from '../../../shared-types/item.ts';
import { noCurrency, usualItem } from '../../../shared-types/usual-item.ts';
import type { CellReading } from './cells.ts';

/** One column of an inventory CSV, for one kind of item. */
export interface Column {
  /** The field of the draft that it fills. */
  readonly path: string;
  readonly reading: CellReading;
  /** What an empty cell stands for. Without one the cell must be filled. */
  readonly fallback?: string;
  /** What an empty cell stands for where that follows from what the columns before it put into its parent field. */
  readonly follows?: (parent: unknown) => string | undefined;
  /** The column whose cell an empty one repeats, before any fallback. */
  readonly sameAs?: string;
  /** The fallback does not hold for an item that is only considered: its price decides. */
  readonly unlessConsidering?: true;
  /** The form of its parent field (watt-hours or milliampere-hours, for example) that filling this column chooses. */
  readonly as?: string;
  /** The field, or the whole one it is a part of, may be left out. */
  readonly optional?: true;
}

export type Columns = Readonly<Record<string, Column>>;

export function number(path: string): Column {
  return { path, reading: 'number' };
}

export function inForm(as: string, path: string, fallback?: string): Column {
  return fallback === undefined ? { ...number(path), as } : { ...number(path), as, fallback };
}

/** Columns that may stay empty, because an empty cell stands for what the usual item of the kind has. */
export function usually(kind: ItemKind) {
  const usual = usualItem(kind, noCurrency);
  const column = (path: string, reading: CellReading): Column => ({
    path,
    reading,
    fallback: cellText(valueAt(usual, path)),
  });
  return {
    number: (path: string) => column(path, 'number'),
    choice: (path: string) => column(path, 'choice'),
    flag: (path: string) => column(path, 'flag'),
  };
}

function valueAt(values: unknown, path: string): unknown {
  return path.split('.').reduce((value, key) => (value as Readonly<Record<string, unknown>>)[key], values);
}

function cellText(value: unknown): string {
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value);
}

/** Label and mass are the rider's to give; a price too, where the item is only considered. */
export function common(kind: ItemKind): Columns {
  return {
    kind: { path: 'kind', reading: 'choice' },
    label: { path: 'label', reading: 'text' },
    state: usually(kind).choice('state'),
    quantity: usually(kind).number('quantity'),
    mass_g: number('massG'),
    price: { path: 'price', reading: 'money', fallback: '0', unlessConsidering: true },
    life_years: { ...number('lifeYears'), optional: true },
    resale: { path: 'resale', reading: 'money', optional: true },
    mount: usually(kind).choice('mount'),
    notes: { path: 'notes', reading: 'text', fallback: '' },
  };
}

/** The one plug of what has no more. */
export const output: Columns = {
  output_standard: { path: 'output.standard', reading: 'choice' },
  output_w: number('output.powerW'),
};
