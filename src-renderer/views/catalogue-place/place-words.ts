import type { CatalogueBackup, CatalogueSize } from '../../../shared-types/catalogue-file.ts';
import { formatNumber, wordsLocale } from '../../../shared-types/figures.ts';

const nouns = {
  items: ['item', 'items'],
  tours: ['tour', 'tours'],
  scenarios: ['scenario', 'scenarios'],
  readings: ['reading', 'readings'],
} as const;

/** What a catalogue holds: `26 items, 1 tour, 3 scenarios, 0 readings`. */
export function holdsWords(size: CatalogueSize): string {
  const names = ['items', 'tours', 'scenarios', 'readings'] as const;
  return names.map((name) => counted(size[name], nouns[name])).join(', ');
}

function counted(count: number, [one, more]: readonly [string, string]): string {
  return `${formatNumber(count, { locale: wordsLocale })} ${count === 1 ? one : more}`;
}

/** Backups come with the newest first. */
export function newestSound(backups: readonly CatalogueBackup[]): CatalogueBackup | undefined {
  return backups.find(({ unfit }) => unfit === null);
}
