import type {
  ExchangeEntry,
  ExchangeList,
  ExchangePreview,
  Fate,
  FieldChange,
} from '../../../shared-types/exchange.ts';
import { fullDate } from '../../../shared-types/dates.ts';
import { keptEstimate } from '../../../shared-types/field-log.ts';
import { formatNumber, percent, withUnit } from '../../../shared-types/figures.ts';
import { itemDraft } from '../../../shared-types/item.ts';
import { readingDraft } from '../../../shared-types/reading.ts';
import { scenarioDraft } from '../../../shared-types/scenario.ts';
import { settings } from '../../../shared-types/settings.ts';
import { tourDraft } from '../../../shared-types/tour.ts';
import { fieldMetaAt } from '../../parts/fields/field-name.ts';
import { optionLabel } from '../../parts/fields/words.ts';
import { nameAt } from '../../state/edit-words.ts';

export const fateWords: Readonly<Record<Fate, string>> = {
  new: 'New',
  changed: 'Changed',
  same: 'As it is here',
  refused: 'Refused',
};
export const fates = Object.keys(fateWords) as Fate[];

/** What a rider has to decide on stands first; what is here already stands last. */
const order: readonly Fate[] = ['refused', 'changed', 'new', 'same'];

export function inOrderOfFate(entries: readonly ExchangeEntry[]): readonly ExchangeEntry[] {
  return order.flatMap((wanted) => entries.filter(({ fate }) => fate === wanted));
}

export type FateCounts = Readonly<Record<Fate | 'all', number>>;

export function countFates(entries: readonly ExchangeEntry[]): FateCounts {
  const counts = { all: entries.length, new: 0, changed: 0, same: 0, refused: 0 };
  for (const { fate } of entries) counts[fate] += 1;
  return counts;
}

/** What a file holds, in one line: `3 new, 1 refused, 14 as they are here`. */
export function findingOf({ entries }: ExchangePreview): string {
  const counts = countFates(entries);
  const inLine = { new: 'new', changed: 'changed', refused: 'refused', same: 'as here' } as const;
  const parts = (['new', 'changed', 'refused', 'same'] as const)
    .filter((fate) => counts[fate] > 0)
    .map((fate) => `${formatNumber(counts[fate])} ${inLine[fate]}`);
  return parts.length === 0 ? 'The file holds nothing' : parts.join(', ');
}

/** Of when and of which version a file is; empty where it does not say. */
export function originOf({ madeOn, program }: ExchangePreview): string {
  if (madeOn === null && program === null) return '';
  const day = madeOn === null ? '' : ` on ${fullDate(madeOn)}`;
  return `Made${day}${program === null ? '' : ` by version ${program}`}`;
}

const schemas = {
  items: itemDraft,
  tours: tourDraft,
  scenarios: scenarioDraft,
  readings: readingDraft,
  estimates: keptEstimate,
  settings,
} satisfies Readonly<Record<ExchangeList | 'settings', unknown>>;

/** Why an entry is refused, or what changes in it: a part for each reason or field. */
export function partsOf(entry: ExchangeEntry): readonly string[] {
  const reasons = entry.reasons.map(
    ({ path, allowed, got }) => `${nameOf(entry, path)}: allowed is ${allowed}; the file has ${got}`,
  );
  const changes = entry.changes.map((change) => changeText(entry, change));
  const more = entry.more === 0 ? [] : [`and ${formatNumber(entry.more)} more`];
  return [...reasons, ...changes, ...twinText(entry), ...more];
}

function twinText({ twin }: ExchangeEntry): readonly string[] {
  if (twin === null) return [];
  return [twin === 'inventory' ? 'looks like one you have' : 'looks like one above'];
}

function changeText(entry: ExchangeEntry, { path, before, after }: FieldChange): string {
  const [from, to] = [before, after].map((value) => valueText(entry, path, value));
  return `${nameOf(entry, path)}: ${from ?? ''} → ${to ?? ''}`;
}

function nameOf({ list }: ExchangeEntry, path: string): string {
  if (path === '') return 'The whole entry';
  return nameAt(schemas[list], path.split('.')) ?? path.replaceAll('.', ' ');
}

/** Enough for any figure that a rider typed. */
const digits = 4;
const longestText = 40;

function valueText({ list }: ExchangeEntry, path: string, value: FieldChange['before']): string {
  const meta = fieldMetaAt(schemas[list], path.split('.'));
  if (value === null) return 'none';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return meta?.choices?.[value] ?? shortened(optionLabel(value));
  if (meta?.isShare === true) return percent(value, { digits: digits - 2 });
  return meta?.unit === undefined ? formatNumber(value, { digits }) : withUnit(value, meta.unit, { digits });
}

function shortened(text: string): string {
  return text.length > longestText ? `${text.slice(0, longestText)}…` : text;
}
