import type { KeptEstimate } from '../../../shared-types/field-log.ts';
import type { Item } from '../../../shared-types/item.ts';
import type { Reading } from '../../../shared-types/reading.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { Settings } from '../../../shared-types/settings.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import type { ReadDb } from '../connection.ts';
import { listItems } from '../items.ts';
import { listKeptEstimates } from '../reading-estimates.ts';
import { listReadings } from '../readings.ts';
import { listScenarios } from '../scenarios.ts';
import { readSettings } from '../settings.ts';
import { listTours } from '../tours.ts';

/** Everything of the rider's that a catalogue holds, or some of it. */
export interface CatalogueContent {
  readonly items: readonly Item[];
  readonly tours: readonly Tour[];
  readonly scenarios: readonly Scenario[];
  readonly readings: readonly Reading[];
  readonly estimates: readonly KeptEstimate[];
  readonly settings: Settings | null;
}

/** The whole catalogue in an order that does not depend on labels: by id, but readings as they came, the oldest date first. */
export function readContent(read: ReadDb): CatalogueContent {
  return {
    items: byId(listItems(read)),
    tours: byId(listTours(read)),
    scenarios: byId(listScenarios(read)),
    // The order within a day is what the log shows, so that it has to come back with them.
    readings: listReadings(read).toReversed(),
    estimates: listKeptEstimates(read),
    settings: readSettings(read),
  };
}

function byId<Row extends { readonly id: string }>(rows: readonly Row[]): readonly Row[] {
  return rows.toSorted((one, other) => (one.id < other.id ? -1 : 1));
}

/** What an estimate goes by: it has no id of its own. */
export function estimateKey({ itemId, measure }: Pick<KeptEstimate, 'itemId' | 'measure'>): string {
  return `${itemId} ${measure}`;
}
