import type { CatalogueBackup, CatalogueSize } from '../../../shared-types/catalogue-file.ts';
import { formatNumber, wordsLocale } from '../../../shared-types/figures.ts';

const nouns: readonly (readonly [one: string, more: keyof CatalogueSize])[] = [
  ['item', 'items'],
  ['tour', 'tours'],
  ['scenario', 'scenarios'],
  ['reading', 'readings'],
];

/** What a catalogue holds: `26 items, 1 tour, 3 scenarios, 0 readings`. */
export function holdsWords(size: CatalogueSize): string {
  return nouns
    .map(([one, more]) => {
      const count = size[more];
      return `${formatNumber(count, { locale: wordsLocale })} ${count === 1 ? one : more}`;
    })
    .join(', ');
}

/** Backups come with the newest first. */
export function newestSound(backups: readonly CatalogueBackup[]): CatalogueBackup | undefined {
  return backups.find(({ unfit }) => unfit === null);
}
