import type { Content, ContentText, TableCell } from 'pdfmake/interfaces';
import type { Cell, Column, Row, Table } from '../content/content.ts';
import { ink, methodColour } from '../inks.ts';
import {
  barWidthPt,
  cellGapPt,
  hairlines,
  headLine,
  longestWord,
  riderText,
  type Look,
  type Sizes,
} from './look.ts';

interface Setting {
  readonly textPt: number;
  readonly underPt: number;
  readonly rowPaddingPt: number;
  readonly bold: boolean;
}

function settingOf(of: Table['size'], size: Sizes): Setting {
  switch (of) {
    case 'figures':
      return { textPt: size.figure, underPt: size.small, rowPaddingPt: 2, bold: true };
    case 'reading':
      return { textPt: size.reading, underPt: size.reference, rowPaddingPt: 0.7, bold: false };
    case 'reference':
      return { textPt: size.reference, underPt: size.reference, rowPaddingPt: 0.4, bold: false };
  }
}

/** Whether rows belong to scenarios, whose colour then runs down the side. */
function hasBars({ rows }: Table): boolean {
  return rows.some(({ method }) => method !== null);
}

/** Widths of the columns of text, pt: what bar and the room between columns leave, by their parts. */
function columnWidths({ columns }: Table, bars: boolean, widthPt: number): readonly number[] {
  const gaps = bars ? 2 * columns.length - 1 : 2 * columns.length - 2;
  const free = widthPt - (bars ? barWidthPt : 0) - gaps * cellGapPt;
  const parts = columns.reduce((sum, { width }) => sum + width, 0);
  return columns.map(({ width }) => (free * width) / parts);
}

/** A table as wide as the look, its head repeated on every page. */
export function tableContent(table: Table, { widthPt, size }: Look): Content {
  const setting = settingOf(table.size, size);
  const bars = hasBars(table);
  const widths = columnWidths(table, bars, widthPt);
  const hasHead = table.columns.some(({ head }) => head !== '');
  const head = [...(bars ? [{ text: '' }] : []), ...table.columns.map((column) => headCell(column, size))];
  const rows = table.rows.map((row) => rowCells(table, row, widths, setting, bars));
  const lines = table.size === 'reference' ? headLine : hairlines;
  return {
    table: {
      headerRows: hasHead ? 1 : 0,
      dontBreakRows: true,
      keepWithHeaderRows: hasHead ? 1 : 0,
      widths: [...(bars ? [barWidthPt] : []), ...widths],
      body: [...(hasHead ? [head] : []), ...rows],
    },
    layout: lines(bars, setting.rowPaddingPt),
  };
}

function headCell({ head, align }: Column, size: Sizes): TableCell {
  return {
    text: head,
    fontSize: size.reference,
    color: ink.quiet,
    bold: true,
    alignment: align,
    verticalAlignment: 'bottom',
  };
}

function rowCells(
  { columns }: Table,
  { method, cells, heads = false }: Row,
  widths: readonly number[],
  setting: Setting,
  bars: boolean,
): TableCell[] {
  const side: TableCell[] = bars
    ? [method === null ? { text: '' } : { text: '', fillColor: methodColour[method] }]
    : [];
  const inside = cells.map((each, at): TableCell => ({
    stack: cellStack(each, widths[at]!, setting, heads || (setting.bold && columns[at]!.head !== '')),
    alignment: columns[at]!.align,
    ...(each.fails === true ? { color: ink.failing } : {}),
  }));
  return [...side, ...inside];
}

function cellStack(
  { text, under = [], drawn }: Cell,
  widthPt: number,
  { textPt, underPt }: Setting,
  bold: boolean,
): Content[] {
  const below = (words: string): ContentText =>
    riderText(words, { fontSize: underPt, color: ink.quiet }, longestWord.inCell);
  return [
    ...(text === '' ? [] : [riderText(text, { fontSize: textPt, bold }, longestWord.inCell)]),
    ...(drawn === undefined
      ? []
      : [{ svg: drawn.svg(widthPt), width: widthPt, height: drawn.heightPt(widthPt) }]),
    ...under.map(below),
  ];
}
