import type { Column, Content } from 'pdfmake/interfaces';
import type { Abreast, Block, Figure, List, Section, Table } from '../content/content.ts';
import { ink } from '../inks.ts';
import { bare, barWidthPt, breakableHeading, riderText, type Look, type RiderText } from './look.ts';
import { tableContent } from './table.ts';

const abreast = 3;
const gapPt = 14;
const afterBlockPt = 3;

/** A section under its heading, which never stands alone at the foot of a page. */
export function sectionContent({ heading, blocks }: Section, look: Look): Content {
  if (blocks.length === 0) return [];
  const head: Content = {
    text: heading,
    bold: true,
    fontSize: look.size.heading,
    margin: [0, 6, 0, 2],
    headlineLevel: breakableHeading,
  };
  return [head, ...blocks.flatMap((block) => wideBlock(block, look))];
}

/** A block over the whole width, whose title never stands alone at the foot of a page either. */
function wideBlock(block: Block, look: Look): Content[] {
  if (!('title' in block) || block.title === null) return [blockContent(block, look)];
  const title: Content = { stack: [titleOf(block.title, look)], headlineLevel: breakableHeading };
  return [title, blockContent({ ...block, title: null }, look)];
}

function blockContent(block: Block, look: Look): Content {
  switch (block.as) {
    case 'table':
      return {
        stack: [titleOf(block.title, look), tableContent(block, look)],
        margin: [0, 0, 0, afterBlockPt],
      };
    case 'abreast':
      return abreastContent(block, look);
    case 'list':
      return listContent(block, look);
    case 'figure':
      return figureContent(block, look);
    case 'paragraph':
      return riderText(block.text, {
        fontSize: block.look === 'plain' ? look.size.body : look.size.reference,
        margin: [0, 0, 0, afterBlockPt],
        ...(block.look === 'plain' ? {} : { color: ink.quiet }),
      });
  }
}

function titleOf(title: string | null, { size }: Look): Content {
  return title === null ? [] : riderText(title, { bold: true, fontSize: size.reading, margin: [0, 2, 0, 1] });
}

function third({ widthPt, size }: Look): Look {
  return { widthPt: (widthPt - (abreast - 1) * gapPt) / abreast, size };
}

/** Things side by side; a short row is filled up so that all are equally wide. One marked `short` is not torn between pages. */
function rowsOf<T>(
  things: readonly T[],
  content: (thing: T) => Content,
  short: (row: readonly T[]) => boolean,
): Content[] {
  const rows = Array.from({ length: Math.ceil(things.length / abreast) }, (_, row) =>
    things.slice(row * abreast, (row + 1) * abreast),
  );
  return rows.map((row): Content => {
    const columns = row.map((thing): Column => ({ stack: [content(thing)], width: '*' }));
    const empty = Array.from({ length: abreast - row.length }, (): Column => ({ text: '', width: '*' }));
    return {
      columns: [...columns, ...empty],
      columnGap: gapPt,
      margin: [0, 0, 0, afterBlockPt],
      unbreakable: short(row),
    };
  });
}

/** What a page holds beside each other, with room to spare: the PDF writer drops a kept block that is taller than a page. */
const mostLettersKept = 1200;
const mostLinesKept = 120;

function isShort(part: Table | List): boolean {
  const texts =
    part.as === 'list'
      ? part.items
      : part.rows.flatMap(({ cells }) => cells.flatMap(({ text, under = [] }) => [text, ...under]));
  return texts.length <= mostLinesKept && texts.join('').length <= mostLettersKept;
}

function abreastContent({ parts }: Abreast, look: Look): Content {
  const narrow = third(look);
  return rowsOf(
    parts,
    (part) => blockContent(part, narrow),
    (row) => row.every(isShort),
  );
}

function figureContent({ finding, subtitle, drawings }: Figure, look: Look): Content {
  const { size } = look;
  const { widthPt } = third(look);
  return [
    riderText(finding, { fontSize: size.body }),
    riderText(subtitle, { fontSize: size.reference, color: ink.quiet, margin: [0, 0, 0, 2] }),
    ...rowsOf(
      drawings,
      (drawn) => ({
        svg: drawn.svg(widthPt),
        width: widthPt,
        height: drawn.heightPt(widthPt),
      }),
      () => true,
    ),
  ];
}

function listContent({ title, items, look: kind }: List, look: Look): Content {
  const { size, widthPt } = look;
  const lines = items.map((item) => riderText(item, { margin: [0, 0, 0, 1] }));
  return {
    stack: [titleOf(title, look), linesContent(lines, kind, widthPt)],
    fontSize: kind === 'reference' ? size.reference : size.reading,
    margin: [0, 0, 0, afterBlockPt],
  };
}

function linesContent(lines: RiderText[], kind: List['look'], widthPt: number): Content {
  switch (kind) {
    case 'plain':
      return { ul: lines };
    case 'numbered':
      return { ol: lines };
    case 'caution':
      return cautions(lines, widthPt);
    case 'reference':
      return inTwoColumns(lines);
  }
}

/** What is looked up is short: two columns hold twice as much, parted so that they are about as long. */
function inTwoColumns(lines: readonly RiderText[]): Content {
  const letters = lines.map(({ text }) => text.length);
  const before = (place: number): number => letters.slice(0, place).reduce((sum, count) => sum + count, 0);
  const half = before(lines.length) / 2;
  const middle = letters.findIndex((count, place) => before(place) + count / 2 >= half);
  const part = (of: readonly Content[]): Column => ({ stack: [...of], width: '*' });
  return {
    columns: [part(lines.slice(0, middle)), part(lines.slice(Math.max(0, middle)))],
    columnGap: gapPt,
  };
}

/** An ochre bar down the side, as on screen. */
function cautions(lines: RiderText[], widthPt: number): Content {
  const rows = lines.map((line) => [{ text: '', fillColor: ink.accent }, line]);
  return { table: { widths: [barWidthPt, widthPt - barWidthPt - gapPt], body: rows }, layout: bare(true) };
}
