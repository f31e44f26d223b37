import Papa from 'papaparse';
import { mostCsvLines, type CsvProblem } from '../../../shared-types/contract.ts';
import { formulaStart } from '../../../shared-types/formula-start.ts';
import { columnNames } from './columns.ts';
import type { FilledCells } from './row-draft.ts';

export interface CsvRow {
  /** As a spreadsheet numbers it: the header is 1, and a line break inside quotes starts no new one. */
  readonly line: number;
  readonly cells: FilledCells;
}

export interface CsvTable {
  readonly rows: readonly CsvRow[];
  readonly decimalComma: boolean;
  /** What is wrong with single lines, which are not among the rows. */
  readonly lineProblems: readonly CsvProblem[];
  /** When there are any, the rows are not worth reading. */
  readonly problems: readonly CsvProblem[];
}

export function readTable(text: string): CsvTable {
  const delimiter = delimiterOf(text);
  const { rows, brokenLines } = parsedRows(text, delimiter);
  const [header = [], ...body] = rows;
  const names = header.map((name) => name.trim().toLowerCase());
  const problems = headerProblems(text, names);
  const decimalComma = delimiter !== ',';
  if (problems.length > 0) return { rows: [], decimalComma, lineProblems: [], problems };
  const lineProblems = strayCells(names, body);
  const astray = new Set(lineProblems.map(({ line }) => line));
  return {
    rows: body.flatMap((cells, index) => rowOf(names, cells, index)).filter(({ line }) => !astray.has(line)),
    decimalComma,
    lineProblems,
    problems: [...brokenLines.map(quoteProblem), ...lengthProblems(body)],
  };
}

interface ParsedRows {
  readonly rows: readonly string[][];
  /** The numbers of lines whose quotation marks do not close. */
  readonly brokenLines: readonly number[];
}

/** More than a rider mends at once. */
const mostBrokenLines = 100;

/** Row by row, so that a file of another kind is given up before it fills the memory. */
function parsedRows(text: string, delimiter: string): ParsedRows {
  const rows: string[][] = [];
  const brokenLines: number[] = [];
  Papa.parse<string[]>(text, {
    delimiter,
    // One row beyond header and limit is enough to know that the limit is passed.
    preview: mostCsvLines + 2,
    step: ({ data, errors }, parser) => {
      rows.push(data);
      if (errors.length > 0) brokenLines.push(rows.length);
      if (rows[0]!.length > mostColumns || brokenLines.length === mostBrokenLines) parser.abort();
    },
  });
  return { rows, brokenLines };
}

/** Ten times as many as there are, for empty ones between them. */
const mostColumns = 10 * columnNames.length;

/** Characters. All columns there are take less than a tenth of it. */
const longestHeader = 10_000;

/** Guessed from the header alone: labels and decimal commas further down only mislead. */
function delimiterOf(text: string): string {
  const [header = ''] = text.slice(0, longestHeader).split(/[\r\n]/, 1);
  return Papa.parse(header).meta.delimiter;
}

function headerProblems(text: string, names: readonly string[]): CsvProblem[] {
  if (text.includes('\0') || !(names.includes('kind') || names.includes('label'))) {
    return [
      problem(
        1,
        '',
        'This is not an inventory CSV: its first line must name the columns, kind, label and mass_g among them.',
      ),
    ];
  }
  if (names.length > mostColumns)
    return [problem(1, '', `Allowed are at most ${mostColumns} columns; there are ${columnNames.length}.`)];
  const unknown = names.filter((name) => name !== '' && !columnNames.includes(name));
  const twice = names.filter((name, index) => name !== '' && names.indexOf(name) !== index);
  return [
    ...unknown.map((name) =>
      problem(1, name, `There is no column of this name. There are: ${columnNames.join(', ')}.`),
    ),
    ...twice.map((name) => problem(1, name, 'This column stands here twice; keep one.')),
    ...(names.includes('kind')
      ? []
      : [problem(1, 'kind', 'This column is missing: it says what each line is.')]),
  ];
}

function quoteProblem(line: number): CsvProblem {
  return problem(line, '', 'A quotation mark is missing or stands in the middle of a cell.');
}

function lengthProblems(body: readonly string[][]): CsvProblem[] {
  if (body.length <= mostCsvLines) return [];
  return [
    problem(
      mostCsvLines + 2,
      '',
      `Allowed are at most ${mostCsvLines.toLocaleString('en')} lines below the header.`,
    ),
  ];
}

const longestEcho = 40;

function strayCells(names: readonly string[], body: readonly string[][]): CsvProblem[] {
  return body.flatMap((cells, index) => {
    const stray = cells.findIndex((cell, at) => cell.trim() !== '' && (names[at] ?? '') === '');
    if (stray === -1) return [];
    return [
      problem(
        index + 2,
        '',
        `The cell "${(cells[stray] ?? '').slice(0, longestEcho)}" stands under no column name. A text or a number with a comma in it needs quotation marks where commas part the columns.`,
      ),
    ];
  });
}

/** Rows with nothing in them are passed over, but counted. */
function rowOf(names: readonly string[], cells: readonly string[], index: number): CsvRow[] {
  const filled = names
    .map((name, at) => [name, cellText(cells[at] ?? '')] as const)
    .filter(([, text]) => text !== '');
  return filled.length === 0 ? [] : [{ line: index + 2, cells: new Map(filled) }];
}

/** Without the apostrophe by which a CSV keeps a spreadsheet from running a text as a formula. */
function cellText(cell: string): string {
  const text = cell.trim();
  return text.startsWith("'") && formulaStart.test(text.slice(1)) ? text.slice(1).trim() : text;
}

function problem(line: number, column: string, message: string): CsvProblem {
  return { line, column, message };
}
