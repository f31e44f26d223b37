import type { z } from 'zod';
import type { CsvProblem } from '../../../shared-types/contract.ts';
import { fieldMeta } from '../../../shared-types/field.ts';
import { itemKindNames, type ItemKind } from '../../../shared-types/item.ts';
import { money, toMajor } from '../../../shared-types/money.ts';
import type { Columns } from './column.ts';
import { columnNames } from './columns.ts';
import { chosenForms, parentOf, type FilledCells } from './row-draft.ts';

/** What is allowed in a column, where the row breaks it. */
interface Refusal {
  readonly column: string;
  readonly allowed: string;
}

/** What the schema refuses, under the name of the column where it comes from: each column once. */
export function problemsOfIssues(
  issues: readonly z.core.$ZodIssue[],
  columns: Columns,
  cells: FilledCells,
  line: number,
  currency: string,
): CsvProblem[] {
  const refusals = new Map<string, Refusal>();
  for (const issue of issues) {
    const column = sourceOf(columnOfPath(issue.path.join('.'), columns), columns, cells);
    if (refusals.has(column)) continue;
    const amount = columns[column]?.reading === 'money';
    refusals.set(column, { column, allowed: amount ? amountsAllowed(currency) : issue.message });
  }
  return [...refusals.values()].map((refusal) => problemOf(refusal, cells, line));
}

/** Cells that say something the row has no place for. */
export function problemsOfPlace(
  kind: ItemKind,
  columns: Columns,
  cells: FilledCells,
  line: number,
): CsvProblem[] {
  const forms = chosenForms(cells, columns);
  return columnNames.flatMap((name) => {
    const column = columns[name];
    if (!cells.has(name)) return [];
    if (column === undefined) {
      const allowed = `nothing: it is not a figure of the kind "${itemKindNames[kind].one}"`;
      return [problemOf({ column: name, allowed }, cells, line)];
    }
    const form = forms.get(parentOf(column));
    if (form === undefined || form.as === column.as) return [];
    const allowed = `nothing, because ${form.column} is filled in`;
    return [problemOf({ column: name, allowed }, cells, line)];
  });
}

/** The column that fills the field, or a part of it, or the field that this one is a part of. */
export function columnOfPath(path: string, columns: Columns): string {
  const named = Object.entries(columns);
  const filling = named.find(([, column]) => path === column.path || path.startsWith(`${column.path}.`));
  const within = named.find(([, column]) => column.path.startsWith(`${path}.`));
  return (filling ?? within)?.[0] ?? '';
}

/** An empty cell that repeats another is not to blame for what stands there. */
function sourceOf(name: string, columns: Columns, cells: FilledCells): string {
  const repeated = columns[name]?.sameAs;
  return repeated !== undefined && !cells.has(name) && cells.has(repeated) ? repeated : name;
}

/** The schema counts minor units; a CSV has an amount as people write it. */
export function amountsAllowed(currency: string): string {
  const { min = 0, max = 0 } = fieldMeta(money.shape.minor) ?? {};
  const [least, most] = [min, max].map((minor) => toMajor({ minor, currency }).toLocaleString('en'));
  return `an amount from ${least ?? ''} to ${most ?? ''} ${currency}`;
}

const longestEcho = 40;

function problemOf({ column, allowed }: Refusal, cells: FilledCells, line: number): CsvProblem {
  const text = cells.get(column);
  const got = text === undefined ? 'it is empty' : `it says "${text.slice(0, longestEcho)}"`;
  return { line, column, message: `Allowed is ${allowed}; ${got}.` };
}
