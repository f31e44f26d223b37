import type { EntryPlace, ExchangeEntry } from '../../shared-types/exchange.ts';

/** What an entry of a catalogue file is known by on screen. */
export function placeKey({ list, place }: EntryPlace): string {
  return `${list} ${place}`;
}

/** What is left out, with all that cannot be taken without it: entries refer only to lists before their own. */
export function withDependents(
  entries: readonly ExchangeEntry[],
  leftOut: ReadonlySet<string>,
): ReadonlySet<string> {
  const all = new Set(leftOut);
  for (const entry of entries)
    if (entry.needs.some((need) => all.has(placeKey(need)))) all.add(placeKey(entry));
  return all;
}
