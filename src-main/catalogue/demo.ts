import { demoItems, demoScenarios, demoSettings, demoTours } from '../../db/demo/demo.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import { inTransaction, type WriteDb } from './connection.ts';
import { saveItem } from './items.ts';
import { saveScenario } from './scenarios.ts';
import { readSettings, saveSettings } from './settings.ts';
import { saveTour } from './tours.ts';

/**
 * Stores the invented demo on the very first start. What tells a first start is that there are no settings yet: they stay
 * when a rider removes everything else, so that the demo does not come back.
 */
export function loadDemoIfEmpty(write: WriteDb): void {
  inTransaction(write, () => {
    if (readSettings(write) !== null) return;
    addDemo(write);
    mustSave(saveSettings(write, demoSettings));
  });
}

/** Stores items, tour and scenarios of the demo as they were invented, in place of what became of them. */
export function addDemo(write: WriteDb): void {
  inTransaction(write, () => {
    for (const { id, ...item } of demoItems) saveItem(write, item, id);
    for (const { id, ...tour } of demoTours) mustSave(saveTour(write, tour, id));
    for (const { id, ...scenario } of demoScenarios) mustSave(saveScenario(write, scenario, id));
  });
}

/** For what refers to nothing but what is stored beside it: if that is refused, it is a fault to find at once. */
export function mustSave<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
}
