import type { FieldLog } from '../../../shared-types/field-log.ts';
import { listItems } from '../../catalogue/items.ts';
import type { ReadDb } from '../../catalogue/connection.ts';
import { listKeptEstimates } from '../../catalogue/reading-estimates.ts';
import { listReadings } from '../../catalogue/readings.ts';
import { itemEstimates } from './item-estimates.ts';

/** All readings with what follows from them. */
export function fieldLog(read: ReadDb, today: string): FieldLog {
  const readings = listReadings(read);
  return { today, readings, estimates: itemEstimates(listItems(read), readings, listKeptEstimates(read)) };
}
