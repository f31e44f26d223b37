import type { SheetTable } from '../../../shared-types/sheet.ts';
import type { SheetMatter } from '../matter.ts';
import { dayTable, legTable } from './energy.ts';
import { assumptionTable, swingTable } from './grounds.ts';
import { airTable, kitTable, lightTable } from './kit.ts';
import { scenarioTable } from './scenarios.ts';
import { tidyCsv, type TidyTable } from './tidy-table.ts';

const tables: Readonly<Record<SheetTable, (matter: SheetMatter) => TidyTable>> = {
  scenarios: scenarioTable,
  legs: legTable,
  days: dayTable,
  kit: kitTable,
  lights: lightTable,
  air: airTable,
  swings: swingTable,
  assumptions: assumptionTable,
};

/** One table of the sheet as a file. */
export function sheetCsv(matter: SheetMatter, table: SheetTable): string {
  return tidyCsv(tables[table](matter));
}
