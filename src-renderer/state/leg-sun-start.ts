import { addDays } from '../../shared-types/dates.ts';
import type { Item } from '../../shared-types/item.ts';
import type { Lying, SunBy } from '../../shared-types/leg-sun.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import { tourDays, type Tour } from '../../shared-types/tour.ts';

/** More days side by side than this are no longer told apart. */
const mostDaysShownFirst = 62;

/** A long leg starts with the months of the year, any other with its own days. */
export function startingBy(days: number): SunBy {
  return days > mostDaysShownFirst ? 'month' : 'day';
}

/** How the panels lie until the rider chooses: as the first scenario with a panel places it, else flat. */
export function startingLying(scenarios: readonly Scenario[], items: readonly Item[]): Lying {
  const panels = new Set(items.filter(({ kind }) => kind === 'panel').map(({ id }) => id));
  const first = scenarios.find(({ kit }) => kit.some(({ itemId }) => panels.has(itemId)));
  return first === undefined ? { as: 'flat' } : { as: 'scenario', scenarioId: first.id };
}

/** False once the scenario that lays the panels is gone. */
export function stillThere(lying: Lying, scenarios: readonly Scenario[]): boolean {
  return lying.as !== 'scenario' || scenarios.some(({ id }) => id === lying.scenarioId);
}

/** The day on which a leg of the tour begins. */
export function firstDateOf(tour: Pick<Tour, 'startDate' | 'legs'>, leg: number): string {
  return addDays(tour.startDate, tourDays({ legs: tour.legs.slice(0, leg) }));
}
