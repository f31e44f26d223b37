import type { CsvColumn } from '../../../shared-types/contract.ts';
import { itemDraft, itemKinds, type ItemDraft, type ItemKind } from '../../../shared-types/item.ts';
import type { CellReading, CellStyle } from './cells.ts';
import type { Column } from './column.ts';
import { columnNames, columnsOfKind } from './columns.ts';
import { exampleItems } from './example-items.ts';
import { cellsOfItem } from './item-cells.ts';
import { draftOfRow, parentOf, type FilledCells } from './row-draft.ts';
import { amountsAllowed, columnOfPath } from './row-problems.ts';

/** No schema takes it: a control character, longer than any text may be. What refuses it says what is allowed. */
const takenNowhere = '\u0007'.repeat(2001);

const kindsInOrder = Object.keys(itemKinds) as ItemKind[];

const writtenAs: Readonly<Partial<Record<CellReading, string>>> = {
  ports: 'each outlet as standard:W with blanks between; ',
  curve: 'each reading as km/h:W with blanks between, speed rising; ',
};

/** What every column takes; a row more where kinds differ. The limits and their wording are those of the schemas. */
export function columnGuide(currency: string): CsvColumn[] {
  const examples = exampleItems(currency);
  return columnNames.flatMap((name) => {
    const rows = kindsInOrder.flatMap((kind) => {
      const column = columnsOfKind[kind][name];
      return column === undefined ? [] : [rowOf(name, kind, column, examples, currency)];
    });
    return joined(rows);
  });
}

function rowOf(
  name: string,
  kind: ItemKind,
  column: Column,
  examples: readonly ItemDraft[],
  currency: string,
): CsvColumn {
  const lines = examples.filter((item) => item.kind === kind).map((item) => cellsOfItem(item, currency));
  const filled = lines.find((cells) => cells.has(name) && cells.get(name) !== '') ?? lines[0];
  const cells = new Map([...(filled ?? [])].map(([key, cell]) => [key, String(cell)]));
  return {
    name,
    kinds: [kind],
    allowed: allowedIn(name, kind, cells, currency),
    whenEmpty: whenEmpty(column),
    example: cells.get(name) ?? '',
  };
}

/** Asks the schema, by a cell that it must refuse. */
function allowedIn(name: string, kind: ItemKind, cells: FilledCells, currency: string): string {
  const columns = columnsOfKind[kind];
  const column = columns[name];
  if (column?.reading === 'money') return `${amountsAllowed(currency)}, or with its own code: 120 USD`;
  const style: CellStyle = { decimalComma: false, currency };
  const refused = new Map(cells).set(name, takenNowhere);
  const { error } = itemDraft.safeParse(draftOfRow(refused, columns, style));
  const messages = (error?.issues ?? [])
    .filter(({ path }) => columnOfPath(path.join('.'), columns) === name)
    .map(({ message }) => message);
  const kindsAllowed = name === 'kind' ? [`one of: ${kindsInOrder.join(', ')}`] : messages;
  const written = column === undefined ? '' : (writtenAs[column.reading] ?? '');
  return written + [...new Set(kindsAllowed)].join('; ');
}

function whenEmpty(column: Column): string {
  if (column.sameAs !== undefined) return `as ${column.sameAs}`;
  if (column.follows !== undefined) return 'what is usual for the port';
  if (column.optional === true) return 'not known';
  if (column.unlessConsidering === true) return `${column.fallback ?? ''}; must be filled if considering`;
  if (column.fallback !== undefined) return column.fallback === '' ? 'nothing' : column.fallback;
  if (column.as !== undefined) return `${parentOf(column)} is given in its other form`;
  return 'must be filled';
}

/** Kinds of which a column takes the same share a row. */
function joined(rows: readonly CsvColumn[]): CsvColumn[] {
  const byText = new Map<string, CsvColumn>();
  for (const row of rows) {
    const key = `${row.allowed}|${row.whenEmpty}`;
    const before = byText.get(key);
    byText.set(key, before === undefined ? row : { ...before, kinds: [...before.kinds, ...row.kinds] });
  }
  return [...byText.values()];
}
