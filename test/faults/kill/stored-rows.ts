import type { BuiltHost } from '../built-host.ts';

/** A row as the catalogue has it. */
export interface StoredRow {
  readonly id: string;
  /** Without its id. */
  readonly draft: unknown;
}

/** The lists of a catalogue, and the settings, which stand alone. */
export type RowList = 'items' | 'tours' | 'scenarios' | 'readings' | 'settings';

/** A row by what the rider calls it, for a save that was never answered has told nobody its id. */
export function keyOf(list: RowList, name: string): string {
  return `${list} ${name}`;
}

export const settingsKey = keyOf('settings', 'all');

/** Every row there is, as the page reads them; a reading goes by its note. */
export async function storedRows(host: BuiltHost): Promise<ReadonlyMap<string, StoredRow>> {
  const named = <Row extends { readonly id: string }>(
    list: RowList,
    rows: readonly Row[],
    nameOf: (row: Row) => string,
  ) =>
    rows.map((row): [string, StoredRow] => {
      const { id, ...draft } = row;
      return [keyOf(list, nameOf(row)), { id, draft }];
    });
  return new Map([
    ...named('items', await host.value('items.list', {}), ({ label }) => label),
    ...named('tours', await host.value('tours.list', {}), ({ label }) => label),
    ...named('scenarios', await host.value('scenarios.list', {}), ({ label }) => label),
    ...named('readings', (await host.value('readings.log', {})).readings, ({ note }) => note),
    [settingsKey, { id: '', draft: await host.value('settings.get', {}) }],
  ]);
}
