import type { Abreast, Block, Cell, Figure, List, Section, SheetContent, Table } from './content/content.ts';
import { oneLine } from './plain-text.ts';

/* CommonMark with pipe tables, as forums and mail programs take it. */

/** Signs that could turn a rider's label into a heading, a list, a link, a table cell or HTML. */
function escaped(text: string): string {
  return oneLine(text)
    .replace(/[\\`*_{}[\]<>#|~&]/gu, '\\$&')
    .replace(/^([-+]|\d+[.)])(?=\s|$)/u, escapedStart);
}

function escapedStart(start: string): string {
  return `${start.slice(0, -1)}\\${start.slice(-1)}`;
}

function cellText({ text, under = [] }: Cell): string {
  return [text, ...under]
    .filter((line) => line !== '')
    .map(escaped)
    .join('<br>');
}

/** A column whose cells are drawings has nothing to say in text. */
function saidColumns({ columns, rows }: Table): readonly number[] {
  return [...columns.keys()].filter((at) => rows.some(({ cells }) => cellText(cells[at]!) !== ''));
}

function tableLines(table: Table): readonly string[] {
  const at = saidColumns(table);
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  const heads = at.map((column) => escaped(table.columns[column]!.head));
  const rules = at.map((column) => (table.columns[column]!.align === 'right' ? '---:' : '---'));
  const rows = table.rows.map(({ cells, heads: strong }) =>
    line(
      at.map((column, place) =>
        strong === true && place === 0 ? bold(cells[column]!) : cellText(cells[column]!),
      ),
    ),
  );
  return [...titleLines(table.title), line(heads), line(rules), ...rows];
}

function bold({ text, under = [] }: Cell): string {
  return cellText({ text: '', under }) === ''
    ? `**${escaped(text)}**`
    : `**${escaped(text)}**<br>${cellText({ text: '', under })}`;
}

function titleLines(title: string | null): readonly string[] {
  return title === null ? [] : [`**${escaped(title)}**`, ''];
}

function listLines({ title, items, look }: List): readonly string[] {
  const mark = (place: number): string => (look === 'numbered' ? `${place + 1}.` : '-');
  return [...titleLines(title), ...items.map((item, place) => `${mark(place)} ${escaped(item)}`)];
}

function abreastLines({ parts }: Abreast): readonly string[] {
  return parts.flatMap((part, place) => [...(place === 0 ? [] : ['']), ...blockLines(part)]);
}

function figureLines({ finding }: Figure): readonly string[] {
  return [escaped(finding)];
}

function blockLines(block: Block): readonly string[] {
  switch (block.as) {
    case 'table':
      return tableLines(block);
    case 'abreast':
      return abreastLines(block);
    case 'list':
      return listLines(block);
    case 'figure':
      return figureLines(block);
    case 'paragraph':
      return block.look === 'drawings' ? [] : [escaped(block.text)];
  }
}

/** What explains drawings has nothing to say here. */
function said(blocks: readonly Block[]): readonly (readonly string[])[] {
  return blocks.map(blockLines).filter((lines) => lines.length > 0);
}

function sectionLines({ heading, blocks }: Section): readonly string[] {
  return [`## ${escaped(heading)}`, ...said(blocks).flatMap((lines) => ['', ...lines])];
}

/** The sheet for a forum or a mail that takes Markdown, lines ended by LF. */
export function comparisonMarkdown(content: SheetContent): string {
  const { title, tour, answer, why, notes, sections, reminder, made } = content;
  const told = sections.filter(({ blocks }) => blocks.length > 0);
  const blocks = [
    [`# ${escaped(title)}`],
    [escaped(tour)],
    [`**${escaped(answer)}** ${escaped(why)}`],
    ...(notes.length === 0 ? [] : [notes.map((note) => `- ${escaped(note)}`)]),
    ...told.map(sectionLines),
    [`*${escaped(reminder)}* ${escaped(made)}`],
  ];
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}
