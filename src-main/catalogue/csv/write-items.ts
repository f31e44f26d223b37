import papaparse from 'papaparse';
import { formulaStart } from '../../../shared-types/formula-start.ts';
import type { ItemDraft } from '../../../shared-types/item.ts';
import { columnNames } from './columns.ts';
import { cellsOfItem } from './item-cells.ts';

/** Without it common spreadsheets take the file for the computer's old code page; `readItemCsv` skips it. */
const byteOrderMark = '\ufeff';

/** An inventory CSV by RFC 4180 that `readItemCsv` reads back; only the columns that some item fills. */
export function writeItemCsv(items: readonly ItemDraft[], currency: string): string {
  const lines = items.map((item) => cellsOfItem(item, currency));
  const fields = columnNames.filter((name) => lines.some((cells) => cells.has(name)));
  const data = lines.map((cells) => fields.map((name) => cells.get(name) ?? null));
  const table = papaparse.unparse({ fields, data }, { newline: '\r\n', escapeFormulae: formulaStart });
  return `${byteOrderMark}${table}\r\n`;
}
