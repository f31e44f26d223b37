import { demoItems, demoScenarios, demoTours } from '../../db/demo/demo.ts';
import type { Station } from '../../shared-types/climate.ts';
import { failure, success, type FieldError, type Outcome } from '../../shared-types/outcome.ts';
import type { OwnStart } from '../../shared-types/own-start.ts';
import { readyMadeScenarios } from '../../shared-types/ready-made.ts';
import { inTransaction, type WriteDb } from '../catalogue/connection.ts';
import { addDemo, mustSave } from '../catalogue/demo.ts';
import { listItems, saveItem, setItemState } from '../catalogue/items.ts';
import { listScenarios, removeScenario, saveScenario } from '../catalogue/scenarios.ts';
import { readSettings, saveSettings } from '../catalogue/settings.ts';
import { removeTour, saveTour } from '../catalogue/tours.ts';
import { tourFaults } from './tour-faults.ts';

/**
 * Lays what a rider begins with into the catalogue, all or nothing: items, tour, and the methods that they make. The new tour is
 * the one compared from now on.
 *
 * @returns the id of the tour, or what of it is refused
 */
export function startOwn(
  write: WriteDb,
  { items, tour, putDemoAway }: OwnStart,
  stations: readonly Station[],
): Outcome<{ readonly tourId: string }> {
  const refused = tourFaults(tour, stations);
  if (refused !== null && !refused.ok)
    return failure(refused.error.code, refused.error.message, refused.error.fields.map(underOwn));
  return inTransaction(write, () => {
    if (putDemoAway) removeDemo(write);
    const own = items.map((item) => saveItem(write, item));
    const { id } = mustSave(saveTour(write, { ...tour, leftAtHome: [] }));
    for (const made of readyMadeScenarios(own))
      if ('draft' in made) mustSave(saveScenario(write, made.draft));
    const settings = readSettings(write);
    if (settings !== null) mustSave(saveSettings(write, { ...settings, tourId: id }));
    return success({ tourId: id });
  });
}

function underOwn(field: FieldError): FieldError {
  return { ...field, path: `own.${field.path}` };
}

/** The demo's items stay on record, since a scenario of the rider's may carry them. */
function removeDemo(write: WriteDb): void {
  for (const { id } of demoScenarios) removeScenario(write, id);
  for (const { id } of demoTours) removeTour(write, id);
  for (const { id } of demoItems) setItemState(write, id, 'retired');
}

/** Puts the demo back as it was invented, beside what is the rider's own; the demo's tour is the one compared. */
export function bringDemoBack(write: WriteDb): Outcome<{ readonly tourId: string }> {
  return inTransaction(write, () => {
    addDemo(write);
    const [tour] = demoTours;
    const settings = readSettings(write);
    if (settings !== null && tour !== undefined)
      mustSave(saveSettings(write, { ...settings, tourId: tour.id }));
    return success({ tourId: tour?.id ?? '' });
  });
}

/** Adds those of the three named methods that the catalogue has everything for and that are not there yet by name. */
export function addReadyMade(write: WriteDb): Outcome<{ readonly added: readonly string[] }> {
  return inTransaction(write, () => {
    const names = listScenarios(write).map(({ label }) => label);
    const drafts = readyMadeScenarios(listItems(write)).flatMap((made) =>
      'draft' in made && !names.includes(made.draft.label) ? [made.draft] : [],
    );
    return success({ added: drafts.map((draft) => mustSave(saveScenario(write, draft)).id) });
  });
}
