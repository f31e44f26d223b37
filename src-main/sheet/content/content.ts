import type { Method } from '../../../shared-types/scenario.ts';
import type { Drawing } from '../figures/drawing.ts';

/* What a sheet says, in order and without a look: the PDF, the Markdown and the plain text are all written from it. */

export interface Cell {
  readonly text: string;
  /** Said smaller below the text. */
  readonly under?: readonly string[];
  /** A figure that fails. */
  readonly fails?: boolean;
  /** Drawn below the text where there is paper to draw on. */
  readonly drawn?: Drawing;
}

export interface Column {
  /** Empty for a column that needs no head. */
  readonly head: string;
  readonly align: 'left' | 'right';
  /** Part of the width on paper; the parts of a table add up to whatever they like. */
  readonly width: number;
}

export interface Row {
  /** null for a row that is no scenario's. */
  readonly method: Method | null;
  readonly cells: readonly Cell[];
  /** Stands for the rows that follow it. */
  readonly heads?: boolean;
}

export interface Table {
  readonly as: 'table';
  /** Above a table that shares its section with others; null otherwise. */
  readonly title: string | null;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** Which column says what a row is about, where it is not the first. */
  readonly subject?: number;
  /** How large it is set: what is decided by, what is read, what is looked up. */
  readonly size: 'figures' | 'reading' | 'reference';
}

export interface Paragraph {
  readonly as: 'paragraph';
  readonly text: string;
  /** `quiet` explains what stands above it, `drawings` what is drawn there: without drawings there is nothing to explain. */
  readonly look: 'plain' | 'quiet' | 'drawings';
}

export interface List {
  readonly as: 'list';
  /** `null` for a list of its own. */
  readonly title: string | null;
  readonly items: readonly string[];
  readonly look: 'plain' | 'numbered' | 'caution' | 'reference';
}

/** Tables or lists of the same sort that may stand beside each other. */
export interface Abreast {
  readonly as: 'abreast';
  readonly parts: readonly (Table | List)[];
}

/** A picture on paper; elsewhere its finding alone is said. */
export interface Figure {
  readonly as: 'figure';
  readonly finding: string;
  /** Quantity, unit, and what line and band are. */
  readonly subtitle: string;
  /** Drawings of the same kind, side by side as far as they fit. */
  readonly drawings: readonly Drawing[];
}

export type Block = Table | Abreast | Paragraph | List | Figure;

export interface Section {
  readonly heading: string;
  readonly blocks: readonly Block[];
}

export interface SheetContent {
  readonly title: string;
  /** The tour in a line. */
  readonly tour: string;
  readonly answer: string;
  readonly why: string;
  readonly notes: readonly string[];
  readonly sections: readonly Section[];
  /** Stands at the foot of every page. */
  readonly reminder: string;
  /** Program, version and date. */
  readonly made: string;
}

export function cell(text: string, under: readonly string[] = []): Cell {
  return { text, under: under.filter((line) => line !== '') };
}

export function paragraph(text: string, look: Paragraph['look'] = 'plain'): Paragraph {
  return { as: 'paragraph', text, look };
}
