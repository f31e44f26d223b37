import { readCell, type CellStyle } from './cells.ts';
import type { Column, Columns } from './column.ts';

/** The cells of a row that say something, by column name. */
export type FilledCells = ReadonlyMap<string, string>;

/** The form chosen for a field that has several, and the column that chose it. */
export interface ChosenForm {
  readonly as: string;
  readonly column: string;
}

type Branch = Record<string, unknown>;

/** The first filled column of each field with several forms decides its form. */
export function chosenForms(cells: FilledCells, columns: Columns): ReadonlyMap<string, ChosenForm> {
  const forms = new Map<string, ChosenForm>();
  for (const [name, column] of Object.entries(columns)) {
    const parent = parentOf(column);
    if (column.as !== undefined && cells.has(name) && !forms.has(parent))
      forms.set(parent, { as: column.as, column: name });
  }
  return forms;
}

export function parentOf({ path }: Column): string {
  return path.split('.')[0] ?? path;
}

/** What the row says, in the shape of an item draft, not yet checked. */
export function draftOfRow(cells: FilledCells, columns: Columns, style: CellStyle): Branch {
  const forms = chosenForms(cells, columns);
  const draft: Branch = {};
  for (const [name, column] of Object.entries(columns)) {
    const form = forms.get(parentOf(column));
    if (column.as !== form?.as) continue;
    const text = cells.get(name) ?? column.follows?.(draft[parentOf(column)]) ?? fallbackOf(column, cells);
    if (column.optional === true && text === undefined) leaveOut(draft, column);
    else put(draft, column, text === undefined ? undefined : readCell(text, column.reading, style));
  }
  for (const [parent, { as }] of forms) (draft[parent] as Branch)['as'] = as;
  return draft;
}

function fallbackOf(column: Column, cells: FilledCells): string | undefined {
  const considered = cells.get('state')?.toLowerCase() === 'considering';
  if (column.unlessConsidering === true && considered) return undefined;
  const repeated = column.sameAs === undefined ? undefined : cells.get(column.sameAs);
  return repeated ?? column.fallback;
}

function leaveOut(draft: Branch, column: Column): void {
  draft[parentOf(column)] ??= null;
}

/** Puts a value at `field` or `field.part`; an undefined one too, so that the schema names exactly what is missing. */
function put(draft: Branch, column: Column, value: unknown): void {
  const [parent = column.path, part] = column.path.split('.');
  if (part === undefined) draft[parent] = value;
  else draft[parent] = { ...(draft[parent] as Branch | null | undefined), [part]: value };
}
