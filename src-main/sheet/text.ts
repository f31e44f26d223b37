import type { Block, Cell, List, Row, Section, SheetContent, Table } from './content/content.ts';
import { nothing } from './format.ts';
import { displayWidth, oneLine, wrap } from './plain-text.ts';
import { textTable } from './text-table.ts';

/** Fits a mail and a terminal of 100 columns. */
const textWidth = 92;

function paragraph(text: string): readonly string[] {
  return wrap(oneLine(text), textWidth);
}

function bullets(texts: readonly string[], mark: (place: number) => string = () => '-'): readonly string[] {
  return texts.flatMap((text, place) => {
    const first = `${mark(place)} `;
    return wrap(`${first}${oneLine(text)}`, textWidth, ' '.repeat(first.length));
  });
}

function titled(title: string | null, lines: readonly string[]): readonly string[] {
  return title === null ? lines : [...paragraph(`${title}:`), ...lines];
}

function saysMore({ under = [] }: Cell): boolean {
  return under.length > 0;
}

/** A table where its lines fit and no cell says more below; else a paragraph for each row. */
function tableLines(table: Table): readonly string[] {
  const said = saidColumns(table);
  const columns = said.map((at) => table.columns[at]!);
  const rows = table.rows.map(({ cells }) => said.map((at) => cells[at]!.text));
  const plain = table.rows.every(({ cells }) => !cells.some(saysMore));
  const lines = textTable(columns, rows);
  const fits = lines.every((line) => displayWidth(line) <= textWidth);
  return titled(table.title, plain && fits ? lines : table.rows.flatMap((row) => rowLines(table, row)));
}

/** A column whose cells are drawings has nothing to say in text. */
function saidColumns({ columns, rows }: Table): readonly number[] {
  return [...columns.keys()].filter((at) =>
    rows.some(({ cells }) => cells[at]!.text !== '' || saysMore(cells[at]!)),
  );
}

const indent = '    ';

/** What the row is about, then its figures, each after its head; what is nothing is left out. */
function rowLines({ columns, subject = 0 }: Table, { cells }: Row): readonly string[] {
  const figures = cells.flatMap((each, at) => {
    const words = cellWords(each);
    if (at === subject || words === '' || words === nothing) return [];
    return [columns[at]!.head === '' ? words : `${columns[at]!.head}: ${words}`];
  });
  return [
    ...wrap(oneLine(cellWords(cells[subject]!)), textWidth, indent),
    ...wrap(oneLine(figures.join('. ')), textWidth - indent.length).map((line) => `${indent}${line}`),
  ];
}

/** A cell in a line, without the full stops inside it. */
function cellWords({ text, under = [] }: Cell): string {
  const parts = [text, ...under].filter((line) => line !== '');
  return parts.map((line) => line.replace(/\.$/u, '')).join('; ');
}

function listLines({ title, items, look }: List): readonly string[] {
  return titled(title, look === 'numbered' ? bullets(items, (place) => `${place + 1}.`) : bullets(items));
}

function blockLines(block: Block): readonly string[] {
  switch (block.as) {
    case 'table':
      return tableLines(block);
    case 'abreast':
      return block.parts.flatMap((part, place) => [...(place === 0 ? [] : ['']), ...blockLines(part)]);
    case 'list':
      return listLines(block);
    case 'figure':
      return paragraph(block.finding);
    case 'paragraph':
      return block.look === 'drawings' ? [] : paragraph(block.text);
  }
}

function sectionLines({ heading, blocks }: Section): readonly string[] {
  const title = oneLine(heading);
  const told = blocks.map(blockLines).filter((lines) => lines.length > 0);
  return [title, '='.repeat(displayWidth(title)), ...told.flatMap((lines) => [...lines, '']).slice(0, -1)];
}

/** No-break spaces have done their work once the lines are broken; many terminals and mail readers show them badly. */
function ordinarySpaces(text: string): string {
  return text.replace(/[\u00a0\u202f]/gu, ' ');
}

/** The sheet for a terminal or a mail, at most 100 columns wide, lines ended by LF. */
export function comparisonText(content: SheetContent): string {
  const { title, tour, answer, why, notes, sections, reminder, made } = content;
  const said = sections.filter(({ blocks }) => blocks.length > 0);
  const blocks = [
    [...paragraph(title), ...paragraph(tour)],
    [...paragraph(answer), ...paragraph(why), ...bullets(notes)],
    ...said.map(sectionLines),
    [reminder, made],
  ];
  return ordinarySpaces(`${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`);
}
