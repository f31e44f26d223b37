import { catalogueFormat, catalogueFormatVersion } from '../../../shared-types/exchange.ts';
import type { CatalogueContent } from './content.ts';

/** What a file says of itself. */
export interface FileHead {
  /** ISO date. */
  readonly madeOn: string;
  /** Version of the program. */
  readonly program: string;
}

/** A catalogue as the text of a file, an entry a line: the same catalogue gives the same text, and a change shows as its line. */
export function catalogueFileText(content: CatalogueContent, { madeOn, program }: FileHead): string {
  const fields = [
    field('format', catalogueFormat),
    field('formatVersion', catalogueFormatVersion),
    field('madeOn', madeOn),
    field('program', program),
    list('items', content.items.map(idFirst)),
    list('tours', content.tours.map(idFirst)),
    list('scenarios', content.scenarios.map(idFirst)),
    list('readings', content.readings.map(idFirst)),
    list('estimates', content.estimates),
    field('settings', content.settings),
  ];
  return `{\n${fields.join(',\n')}\n}\n`;
}

function field(name: string, value: unknown): string {
  return `  ${JSON.stringify(name)}: ${JSON.stringify(value)}`;
}

function list(name: string, entries: readonly unknown[]): string {
  const lines = entries.map((entry) => `    ${JSON.stringify(entry)}`);
  return `  ${JSON.stringify(name)}: ${lines.length === 0 ? '[]' : `[\n${lines.join(',\n')}\n  ]`}`;
}

function idFirst({ id, ...draft }: { readonly id: string }): unknown {
  return { id, ...draft };
}
