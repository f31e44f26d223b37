import { getContext, setContext } from 'svelte';

type EntryName = () => string;

const key = Symbol('the name of an entry of a list');

/** Names the entry that all fields below stand in, for those who do not see it around them. */
export function nameEntry(name: EntryName): void {
  setContext(key, name);
}

/** undefined for a field that stands in no list. */
export function useEntryName(): EntryName | undefined {
  return getContext<EntryName | undefined>(key);
}
