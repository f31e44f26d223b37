import fc from 'fast-check';
import { mostCsvLines } from '../../../shared-types/contract.ts';
import { columnNames } from '../../../src-main/catalogue/csv/columns.ts';
import { writeItemCsv } from '../../../src-main/catalogue/csv/write-items.ts';
import { cases } from '../../support/full-run.ts';
import { anyItem } from './likely-parts.ts';
import { cutShort, overwritten, spacedByNuls, twice } from './text-damage.ts';

/*
 * Inventory CSVs, from such as Chargewright writes to what spreadsheets, editors and chance make of them.
 */

const goodCsv = fc.array(anyItem, { minLength: 1, maxLength: 6 }).map((items) => writeItemCsv(items, 'EUR'));

const oddCells = [
  ...[
    '',
    ' ',
    '"',
    '""',
    '"a"b',
    'a"b',
    "'",
    '=1+1',
    "'=1+1",
    '@SUM(A1)',
    '\0',
    '\ufeff',
    '\ud83d',
    '\u00a0',
    '\t',
  ],
  ...[
    '1,5',
    '1.5',
    '1.234,5',
    '1e308',
    '1e999',
    '-0',
    'NaN',
    '٣',
    '5 g',
    '120 USD',
    '1,5 usd',
    '120 €',
    'yes',
    'TRUE',
  ],
  ...[
    'bank',
    'BANK',
    'device',
    '__proto__',
    'constructor',
    'considering',
    'owned',
    '2027-02-30',
    'pd:30 bc-1.2:7,5',
  ],
  ...['pd', ':', '10:1 20:2', 'a\nb', '#REF!'],
];
const cell = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...oddCells) },
  { weight: 2, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
  { weight: 1, arbitrary: fc.double().map(String) },
);
const columnName = fc.oneof(
  { weight: 12, arbitrary: fc.constantFrom(...columnNames) },
  { weight: 1, arbitrary: cell },
);

const separator = fc.constantFrom(',', ';', '\t', '|');
const lineEnd = fc.constantFrom('\n', '\r\n', '\r', '\n\n');
const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
const written = fc.tuple(cell, fc.boolean()).map(([text, isQuoted]) => (isQuoted ? quoted(text) : text));

/** A table of its own making; now and then a row parts its cells by another sign than the others. */
const anyTable = fc
  .tuple(fc.uniqueArray(columnName, { maxLength: 12 }), fc.boolean(), separator, lineEnd)
  .chain(([names, namesKind, sign, end]) => {
    const header = namesKind ? ['kind', 'label', ...names] : names;
    const row = fc.tuple(
      fc.array(written, { maxLength: header.length + 1 }),
      fc.oneof({ weight: 9, arbitrary: fc.constant(sign) }, separator),
    );
    return fc
      .array(row, { maxLength: 8 })
      .map((rows) => [header.join(sign), ...rows.map(([cells, by]) => cells.join(by))].join(end));
  });

const damaged = fc.oneof(
  cutShort(goodCsv),
  overwritten(goodCsv, cell),
  goodCsv.map((text) => text.replaceAll(',', ';')),
  goodCsv.map((text) => text.replaceAll('.', ',').replaceAll(',', ';')),
  twice(goodCsv),
  spacedByNuls(goodCsv),
);

/** Repeats that make a file as long as any that is taken, in a full run. */
const many = cases(100_000, 2_000_000);

/** Files that are long or wide rather than odd. */
export const greatCsvs: readonly { readonly what: string; readonly text: () => string }[] = [
  { what: 'as many lines as are taken', text: () => lines('accessory,Cable,20', mostCsvLines) },
  { what: 'a line more', text: () => lines('accessory,Cable,20', mostCsvLines + 1) },
  { what: 'an error in every line', text: () => lines('accessory,,heavy', mostCsvLines) },
  { what: 'one line of 20 MB', text: () => 'x'.repeat(20_000_000) },
  { what: 'quotation marks without end', text: () => lines('"a"b'.repeat(many), 1) },
  { what: 'quotation marks in every cell', text: () => lines('"a"b",'.repeat(many), 1) },
  { what: 'a header of unknown columns', text: () => `kind,${uniqueNames(many)}\n` },
  {
    what: 'a header of empty columns',
    text: () => `kind${','.repeat(many)}\n${'bank\n'.repeat(mostCsvLines)}`,
  },
  { what: 'outlets without end', text: () => `kind,outputs\nbank,${'pd:30 '.repeat(many)}` },
  { what: 'cells without end', text: () => lines('bank,'.repeat(many), 1) },
  { what: 'an amount in a sea of blanks', text: () => `kind,price\nbank,1${' '.repeat(many)}EU` },
  { what: 'nothing but ends of lines', text: () => '\n'.repeat(many) },
];

function lines(line: string, count: number): string {
  return `kind,label,mass_g\n${`${line}\n`.repeat(count)}`;
}

function uniqueNames(count: number): string {
  return Array.from({ length: count }, (_, place) => `c${place}`).join(',');
}

export const anyCsv: fc.Arbitrary<string> = fc.oneof(
  { weight: 2, arbitrary: goodCsv },
  { weight: 4, arbitrary: damaged },
  { weight: 5, arbitrary: anyTable },
  { weight: 1, arbitrary: fc.string({ unit: 'binary' }) },
);
