import type { Comparison } from '../../shared-types/comparison.ts';
import { failure, success, type Outcome } from '../../shared-types/outcome.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import { whyNoSwings } from '../../shared-types/why-no-swings.ts';
import { listItems } from '../catalogue/items.ts';
import type { OpenedCatalogue } from '../catalogue/open.ts';
import { withStorageOutcome } from '../catalogue/storage-error.ts';
import { findTour } from '../catalogue/tours.ts';
import type { SheetInputs, SheetMatter } from '../sheet/matter.ts';
import { travellingItems } from './assemble/kit.ts';
import { chosenScenarios, type Chosen, type ComparisonDesk } from './comparison-desk.ts';
import type { SwingsDesk } from './outlook/swings-desk.ts';
import { settingsOf } from './settings-of.ts';

/** What a sheet is asked to tell of. */
export interface SheetQuestion {
  readonly tourId: string;
  readonly scenarioIds: Chosen;
  readonly withSwings: boolean;
}

/** Gathers what a sheet is written from; what the other desks have kept is not walked again. */
export interface SheetDesk {
  gather(runId: string, question: SheetQuestion): Promise<Outcome<Omit<SheetMatter, 'stamp'>>>;
}

const notAsked = 'Not looked for: the sheet was saved without it.';

export function createSheetDesk(
  catalogue: OpenedCatalogue,
  comparisons: ComparisonDesk,
  swingsDesk: SwingsDesk,
): SheetDesk {
  return {
    gather: async (runId, { tourId, scenarioIds, withSwings }) => {
      // Read before anything is awaited, so that it is what the comparison reads too.
      const inputs = withStorageOutcome(() => readInputs(catalogue, tourId, scenarioIds));
      const comparison = await comparisons.run(runId, tourId, scenarioIds);
      if (!inputs.ok) return inputs;
      if (!comparison.ok) return comparison;
      const why = withSwings ? whyNoSwings(comparison.value) : notAsked;
      if (why !== null) return success(matter(comparison.value, { why }, inputs.value));
      const { preferences } = inputs.value.settings;
      const swings = await swingsDesk.find(runId, { tourId, scenarioIds, preferences });
      return swings.ok ? success(matter(comparison.value, swings.value, inputs.value)) : swings;
    },
  };
}

function matter(
  comparison: Comparison,
  swings: SheetMatter['swings'],
  inputs: SheetInputs,
): Omit<SheetMatter, 'stamp'> {
  return { comparison, swings, inputs };
}

function readInputs(catalogue: OpenedCatalogue, tourId: string, scenarioIds: Chosen): Outcome<SheetInputs> {
  const tour = findTour(catalogue.read, tourId);
  if (tour === null) return failure('not-found', 'That tour is not in the catalogue (any more).');
  const scenarios = chosenScenarios(catalogue, scenarioIds);
  if (!scenarios.ok) return scenarios;
  const all = listItems(catalogue.read);
  const along = new Set([
    ...travellingItems(all, tour.leftAtHome).map(({ id }) => id),
    ...scenarios.value.flatMap(carriedIds),
  ]);
  return success({
    tour,
    scenarios: scenarios.value,
    items: all.filter(({ id }) => along.has(id)),
    settings: settingsOf(catalogue.read),
  });
}

function carriedIds({ kit }: Scenario): readonly string[] {
  return kit.map(({ itemId }) => itemId);
}
