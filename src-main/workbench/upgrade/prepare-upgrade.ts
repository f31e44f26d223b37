import type { Item } from '../../../shared-types/item.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import type { UpgradeQuestion } from '../../../shared-types/upgrade.ts';
import { listItems } from '../../catalogue/items.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { listScenarios } from '../../catalogue/scenarios.ts';
import { listTours } from '../../catalogue/tours.ts';
import { prepareGround, type PreparedGround } from '../prepare-ground.ts';
import { changedKit, type ChangedKit } from './changed-kit.ts';

/** All that an upgrade check is made from. */
export interface PreparedUpgrade {
  readonly question: UpgradeQuestion;
  readonly kit: ChangedKit;
  readonly items: readonly Item[];
  /** At least one. */
  readonly grounds: readonly PreparedGround[];
}

/** Reads from the catalogue what an upgrade check is made from. */
export function prepareUpgrade(
  catalogue: OpenedCatalogue,
  question: UpgradeQuestion,
): Outcome<PreparedUpgrade> {
  const items = listItems(catalogue.read);
  const kit = changedKit(question, items, listScenarios(catalogue.read));
  if (!kit.ok) return kit;
  const tours = chosenTours(listTours(catalogue.read), question.tourIds);
  if (!tours.ok) return tours;
  const grounds: PreparedGround[] = [];
  for (const { id, label } of tours.value) {
    const ground = prepareGround(catalogue, id);
    if (!ground.ok) return failure(ground.error.code, `${label}: ${ground.error.message}`);
    grounds.push(ground.value);
  }
  return success({ question, kit: kit.value, items, grounds });
}

function chosenTours(all: readonly Tour[], tourIds: readonly string[] | null): Outcome<readonly Tour[]> {
  if (all.length === 0) return failure('not-found', 'There is no tour to check a change on: plan one first.');
  const missing = tourIds?.find((id) => all.every((tour) => tour.id !== id));
  if (missing !== undefined)
    return failure('not-found', `The tour ${missing} is not in the catalogue (any more).`);
  return success(all.filter(({ id }) => tourIds === null || tourIds.includes(id)));
}
