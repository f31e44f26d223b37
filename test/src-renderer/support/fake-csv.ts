import type { CsvReading, Handlers } from '../../../shared-types/contract.ts';
import type { Item } from '../../../shared-types/item.ts';
import { success } from '../../../shared-types/outcome.ts';

type CsvCalls = Pick<
  Handlers,
  'items.readCsv' | 'items.addCsv' | 'items.csvColumns' | 'items.saveCsv' | 'items.saveCsvTemplate'
>;

/** A fake CSV is a label a line; the label `bad` is in error, and one that is there already has a twin. */
export function fakeCsv(held: { readonly items: Item[] }, fresh: () => string): CsvCalls {
  const read = (text: string): CsvReading => {
    const rows = text.split('\n').map((label, index) => ({ label, line: index + 1 }));
    const [item] = held.items;
    return {
      lines: rows
        .filter(({ label }) => label !== '' && label !== 'bad')
        .map(({ label, line }) => ({
          line,
          item: { ...item!, label },
          twin: held.items.some((each) => each.label === label) ? 'inventory' : null,
        })),
      problems: rows
        .filter(({ label }) => label === 'bad')
        .map(({ line }) => ({ line, column: 'label', message: 'not good' })),
    };
  };
  const file = (fileName: string) => success({ as: 'saved', path: `a folder/${fileName}` } as const);
  return {
    'items.readCsv': ({ text }) => success(read(text)),
    'items.addCsv': ({ text, leaveOut, passOverErrors }) => {
      const { lines, problems } = read(text);
      if (problems.length > 0 && !passOverErrors) return success({ added: [], problems });
      const added = lines
        .filter(({ line }) => !leaveOut.includes(line))
        .map(({ item }): Item => ({ ...item, id: fresh() }));
      held.items.push(...added);
      return success({ added, problems });
    },
    'items.csvColumns': () =>
      success([
        { name: 'label', kinds: ['device'], allowed: 'text', whenEmpty: 'must be filled', example: 'Phone' },
      ]),
    'items.saveCsv': () => file('inventory.csv'),
    'items.saveCsvTemplate': () => file('inventory-template.csv'),
  };
}
