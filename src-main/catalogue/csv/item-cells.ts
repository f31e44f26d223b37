import type { ItemDraft } from '../../../shared-types/item.ts';
import { toMajor, type Money } from '../../../shared-types/money.ts';
import type { CellReading } from './cells.ts';
import type { Column } from './column.ts';
import { columnsOfKind } from './columns.ts';
import { parentOf } from './row-draft.ts';

/** A number stays one, so that its minus is not taken for the start of a formula. */
export type Cell = string | number;

/** The cells of an item's line by column: what `draftOfRow` reads back as the same item. Amounts without a code are in `currency`. */
export function cellsOfItem(item: ItemDraft, currency: string): ReadonlyMap<string, Cell> {
  const cells = new Map<string, Cell>();
  for (const [name, column] of Object.entries(columnsOfKind[item.kind])) {
    if (!isInForm(item, column)) continue;
    const value = valueAt(item, column.path.split('.'));
    if (value !== null && value !== undefined) cells.set(name, cellOf(value, column.reading, currency));
  }
  return cells;
}

function isInForm(item: ItemDraft, column: Column): boolean {
  if (column.as === undefined) return true;
  const parent = valueAt(item, [parentOf(column)]) as { readonly as: string };
  return parent.as === column.as;
}

function valueAt(values: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>(
    (value, key) => (value as Readonly<Record<string, unknown>> | null)?.[key],
    values,
  );
}

interface Pair {
  readonly standard?: string;
  readonly speedKmh?: number;
  readonly powerW: number;
}

function cellOf(value: unknown, reading: CellReading, currency: string): Cell {
  switch (reading) {
    case 'number':
      return value as number;
    case 'text':
    case 'date':
    case 'choice':
      return value as string;
    case 'flag':
      return value === true ? 'yes' : 'no';
    case 'money':
      return moneyCell(value as Money, currency);
    case 'ports':
    case 'curve':
      return (value as readonly Pair[])
        .map(({ standard, speedKmh, powerW }) => `${standard ?? String(speedKmh)}:${powerW}`)
        .join(' ');
  }
}

function moneyCell(money: Money, currency: string): Cell {
  const amount = toMajor(money);
  return money.currency === currency ? amount : `${amount} ${money.currency}`;
}
