import { fullDate } from '../../../shared-types/dates.ts';
import type { ExchangeEntry, ExchangeList } from '../../../shared-types/exchange.ts';
import { wordsLocale } from '../../../shared-types/figures.ts';
import { itemKindNames, itemKinds, type Item } from '../../../shared-types/item.ts';
import { nameOf } from './read-entries.ts';

/** What an entry is called. */
export type EntryWords = Pick<ExchangeEntry, 'kind' | 'label'>;

const kinds: Readonly<Record<ExchangeList | 'settings', string>> = {
  items: 'Item',
  tours: 'Tour',
  scenarios: 'Scenario',
  readings: 'Reading',
  estimates: 'Stored value',
  settings: 'Settings',
};

interface Entry {
  readonly raw: unknown;
  readonly place: number;
}

/** Of what has a label of its own; refused ones may be of no known kind, and have no label. */
export function labelledWords(list: 'items' | 'tours' | 'scenarios', entry: Entry): EntryWords {
  const { kind, label } = nameOf(entry.raw);
  const isKnown = list === 'items' && typeof kind === 'string' && isItemKind(kind);
  return {
    kind: isKnown ? itemKindNames[kind].one : kinds[list],
    label: textOf(label) ?? withoutLabel(entry),
  };
}

/** Of what is noted of an item: the item and the day. */
export function notedWords(
  list: 'readings' | 'estimates',
  entry: Entry,
  find: (itemId: string) => Item | undefined,
): EntryWords {
  const { itemId, on } = nameOf(entry.raw);
  const item = typeof itemId === 'string' ? find(itemId) : undefined;
  const named = item?.label ?? textOf(itemId) ?? withoutLabel(entry);
  const day = textOf(on);
  return {
    kind: kinds[list],
    label: day === null ? named : `${named}, ${fullDate(day, wordsLocale)}`,
  };
}

export const settingsWords: EntryWords = {
  kind: kinds.settings,
  label: 'Currency, weather, weights and the rest',
};

const longestLabel = 80;

function textOf(value: unknown): string | null {
  return typeof value === 'string' && value.trim() !== '' ? value.trim().slice(0, longestLabel) : null;
}

function withoutLabel({ raw, place }: Entry): string {
  return textOf(nameOf(raw).id) ?? `No. ${place + 1} of its list`;
}

function isItemKind(kind: string): kind is Item['kind'] {
  return Object.hasOwn(itemKinds, kind);
}
