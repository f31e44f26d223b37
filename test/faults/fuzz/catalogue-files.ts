import fc from 'fast-check';
import { exchangeLists } from '../../../shared-types/exchange.ts';
import { catalogueFileText } from '../../../src-main/catalogue/exchange/file-text.ts';
import { cases } from '../../support/full-run.ts';
import { randomCatalogue } from '../../support/random-catalogue.ts';
import { anyValue } from './any-value.ts';
import { spoilt } from './spoilt.ts';
import { cutShort, overwritten } from './text-damage.ts';

/*
 * Catalogue files, from such as Chargewright writes to what hands, programs and cards make of them.
 */

const head = { madeOn: '2027-04-18', program: '0.0.0' };

/** What a file holds, before it is text. */
type Content = Readonly<Record<string, unknown>>;

function entriesOf(content: Content, list: string): readonly unknown[] {
  const entries = content[list];
  return Array.isArray(entries) ? entries : [];
}

type Change = (content: Content) => unknown;

const listName = fc.constantFrom(...exchangeLists);

/** What is done to a file as a whole. */
const change: fc.Arbitrary<Change> = fc.oneof(
  listName.map((list) => (content: Content) => ({
    ...content,
    [list]: [...entriesOf(content, list), ...entriesOf(content, list)],
  })),
  fc
    .tuple(listName, listName)
    .map(([from, to]) => (content: Content) => ({ ...content, [to]: entriesOf(content, from) })),
  listName.map(
    (list) =>
      ({ [list]: _, ...others }: Content) =>
        others,
  ),
  listName.map((list) => (content: Content) => ({
    ...content,
    [list]: entriesOf(content, list).toReversed(),
  })),
  fc
    .tuple(fc.constantFrom('format', 'formatVersion', 'madeOn', 'program', 'settings', '__proto__'), anyValue)
    .map(
      ([key, value]) =>
        (content: Content) =>
          Object.fromEntries([...Object.entries(content), [key, value]]),
    ),
);

/** Keys and words that take each other's place through the whole text. */
const swaps = [
  ['"id"', '"itemId"'],
  ['"label"', '"name"'],
  ['"as"', '"kind"'],
  ['an-bank', 'an-device'],
  ['an-panel', 'nobody'],
  ['scenario-1', 'scenario-2'],
  ['tour-of-spring', 'tour-of-autumn'],
  ['true', '"true"'],
  ['null', '0'],
  ['0', '9'],
] as const;

/** What JSON has no word for is null, or stands as a beginning without end. */
function textOf(content: unknown): string {
  try {
    return JSON.stringify([content]).slice(1, -1);
  } catch {
    return '[{"items":'.repeat(10_000);
  }
}

/** The files that come of one that is good. */
function filesLike(good: fc.Arbitrary<string>): fc.Arbitrary<string> {
  const content = good.map((text) => JSON.parse(text) as Content);
  return fc.oneof(
    { weight: 4, arbitrary: good },
    { weight: 6, arbitrary: spoilt(content).map(textOf) },
    { weight: 2, arbitrary: spoilt(spoilt(spoilt(content))).map(textOf) },
    { weight: 4, arbitrary: fc.tuple(content, change).map(([given, changed]) => textOf(changed(given))) },
    {
      weight: 3,
      arbitrary: fc
        .tuple(good, fc.constantFrom(...swaps))
        .map(([text, [from, to]]) => text.replaceAll(from, to)),
    },
    { weight: 1, arbitrary: cutShort(good) },
    { weight: 2, arbitrary: overwritten(good, fc.string({ unit: 'binary', maxLength: 2 })) },
  );
}

/** Files like one of these, like one of a random catalogue, and such as hold anything. */
export function anyCatalogueFile(known: readonly string[]): fc.Arbitrary<string> {
  return fc.oneof(
    { weight: 5, arbitrary: filesLike(fc.constantFrom(...known)) },
    { weight: 4, arbitrary: filesLike(randomCatalogue.map((content) => catalogueFileText(content, head))) },
    { weight: 1, arbitrary: anyValue.map(textOf) },
  );
}

/** As many as are read, in a full run. */
const mostEntries = cases(20_000, 200_000);
/** With its comma nearly as much as the largest file has. */
const mostFigures = cases(900_000, 9_000_000);
const around = (lists: string): string => `{"format":"chargewright-catalogue","formatVersion":1,${lists}}`;
const listOf = (name: string, entry: string, count: number): string =>
  `"${name}":[${`${entry},`.repeat(count - 1)}${entry}]`;

/** Files that are long, wide or deep rather than odd. */
export const greatCatalogueFiles: readonly { readonly what: string; readonly text: () => string }[] = [
  { what: 'cut off near its end', text: () => around(listOf('items', '0', mostFigures)).slice(0, -2) },
  { what: 'broken near its end', text: () => around(`${listOf('items', '0', mostFigures)} x`) },
  { what: 'one text of 19 MB', text: () => around(`"items":["${'a'.repeat(19_000_000)}"]`) },
  {
    what: 'a great many entries, none of which is one',
    text: () => around(listOf('items', '0', mostEntries)),
  },
  {
    what: 'a great many beginnings of a device',
    text: () => around(listOf('items', '{"kind":"device"}', mostEntries)),
  },
  {
    what: 'more in all its lists',
    text: () => around(exchangeLists.map((list) => listOf(list, '{}', mostEntries)).join(',')),
  },
  {
    what: 'a million lists in each other',
    text: () => around(`"items":${'['.repeat(1e6)}${']'.repeat(1e6)}`),
  },
  { what: 'nothing but beginnings of lists', text: () => '['.repeat(mostFigures) },
  { what: 'a group of a hundred thousand fields', text: () => around(`"items":[{${manyFields(100_000)}}]`) },
  {
    what: 'a tour of a million legs',
    text: () => around(`"tours":[{"id":"a",${listOf('legs', '0', 1_000_000)}}]`),
  },
];

function manyFields(count: number): string {
  return Array.from({ length: count }, (_, place) => `"k${place}":0`).join(',');
}
