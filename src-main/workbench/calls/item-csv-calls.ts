import type { CsvAddition, Handlers } from '../../../shared-types/contract.ts';
import { failure, success } from '../../../shared-types/outcome.ts';
import { columnGuide } from '../../catalogue/csv/column-guide.ts';
import { exampleItems } from '../../catalogue/csv/example-items.ts';
import { markTwins } from '../../catalogue/csv/twins.ts';
import { writeItemCsv } from '../../catalogue/csv/write-items.ts';
import { readItemCsv } from '../../catalogue/item-csv.ts';
import { addItems, listItems, findItem } from '../../catalogue/items.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import { withFileOutcome } from '../file-fault.ts';
import type { FileDesk, MadeFile } from '../file-desk.ts';
import { settingsOf } from '../settings-of.ts';

type ItemCsvCalls = Pick<
  Handlers,
  'items.readCsv' | 'items.addCsv' | 'items.csvColumns' | 'items.saveCsv' | 'items.saveCsvTemplate'
>;

/** The calls by which an inventory comes in and goes out as a CSV. */
export function itemCsvCalls({ read, write }: OpenedCatalogue, files: FileDesk): ItemCsvCalls {
  const currency = (): string => settingsOf(read).currency;
  return {
    'items.readCsv': ({ text }) =>
      withStorageOutcome(() => {
        const { lines, problems } = readItemCsv(text, currency());
        return success({ lines: markTwins(lines, listItems(read)), problems });
      }),
    'items.addCsv': ({ text, leaveOut, passOverErrors }) =>
      withStorageOutcome(() => {
        const { lines, problems } = readItemCsv(text, currency());
        if (problems.length > 0 && !passOverErrors) return success<CsvAddition>({ added: [], problems });
        const out = new Set(leaveOut);
        const drafts = lines.filter(({ line }) => !out.has(line)).map(({ item }) => item);
        return success<CsvAddition>({ added: addItems(write, drafts), problems });
      }),
    'items.csvColumns': () => withStorageOutcome(() => success(columnGuide(currency()))),
    'items.saveCsv': ({ ids }) =>
      withFileOutcome(async () => {
        const items = ids.flatMap((id) => findItem(read, id) ?? []);
        if (items.length === 0)
          return failure('not-found', 'None of these items is in the catalogue (any more).');
        return success(await files.save(csvFile('inventory.csv', writeItemCsv(items, currency()))));
      }),
    'items.saveCsvTemplate': () =>
      withFileOutcome(async () => {
        const text = writeItemCsv(exampleItems(currency()), currency());
        return success(await files.save(csvFile('inventory-template.csv', text)));
      }),
  };
}

function csvFile(fileName: string, text: string): MadeFile {
  return { fileName, mediaType: 'text/csv', bytes: new TextEncoder().encode(text) };
}
