import type { FieldLog } from '../../../shared-types/field-log.ts';
import { listItems } from '../../catalogue/items.ts';
import type { ReadDb } from '../../catalogue/connection.ts';
import { listKeptEstimates } from '../../catalogue/reading-estimates.ts';
import { listReadings } from '../../catalogue/readings.ts';
import { plugConverter } from './hub-yield.ts';
import { itemEstimates } from './item-estimates.ts';

/** All readings with what follows from them. */
export function fieldLog(read: ReadDb, today: string): FieldLog {
  const [items, readings] = [listItems(read), listReadings(read)];
  const log = { readings, kept: listKeptEstimates(read), converter: plugConverter(items) };
  return { today, readings, estimates: itemEstimates(items, log) };
}
