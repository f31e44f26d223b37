import type { Block, Cell, List, Section, Table } from '../../src-main/sheet/content/content.ts';

function flat(block: Block): readonly Block[] {
  return block.as === 'abreast' ? block.parts : [block];
}

function blocksOf({ blocks }: Section): readonly Block[] {
  return blocks.flatMap(flat);
}

/** The tables of a section, those that stand beside each other too. */
export function tablesOf(section: Section): readonly Table[] {
  return blocksOf(section).filter((block) => block.as === 'table');
}

export function tableOf(section: Section): Table {
  const [table] = tablesOf(section);
  if (table === undefined) throw new Error(`${section.heading}: no table`);
  return table;
}

export function listsOf(section: Section): readonly List[] {
  return blocksOf(section).filter((block) => block.as === 'list');
}

export function paragraphsOf(section: Section): readonly string[] {
  return blocksOf(section).flatMap((block) => (block.as === 'paragraph' ? [block.text] : []));
}

/** The cells of a row, by place. */
export function cellsOf(table: Table, row: number): readonly Cell[] {
  const cells = table.rows[row]?.cells;
  if (cells === undefined) throw new Error(`no row ${row}`);
  return cells;
}

/** The cells below a head, found by how it begins. */
export function columnOf(table: Table, head: string): readonly Cell[] {
  const at = table.columns.findIndex((column) => column.head.startsWith(head));
  if (at < 0) throw new Error(`no column ${head}`);
  return table.rows.map(({ cells }) => cells[at]!);
}

export function columnTexts(table: Table, head: string): readonly string[] {
  return columnOf(table, head).map(({ text }) => text);
}

/** The texts of each row, without what is said below them. */
export function rowTexts({ rows }: Table): readonly (readonly string[])[] {
  return rows.map(({ cells }) => cells.map(({ text }) => text));
}
