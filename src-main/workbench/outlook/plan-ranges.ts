import { nightOf, tourDays, type Tour } from '../../../shared-types/tour.ts';
import { costOf } from '../../model/judge/cost.ts';
import { carriedItems } from '../assemble/kit.ts';
import { pricedLines } from '../assemble/money-and-mass.ts';
import { withWallEvery } from '../walls-every.ts';
import type { AssumptionRange, Span } from './assumption-range.ts';
import { factors, fromPractice, nothingMoved } from './range-parts.ts';
import { withTour } from './varied-inputs.ts';

/* What the plan itself may turn out to be. */

const price: AssumptionRange = {
  id: 'price',
  name: 'Price of what is to be bought',
  scale: 'factor',
  source: fromPractice,
  absent: 'nothing is to be bought',
  span: () => factors(0.8, 1.2),
  moves: (scenario, { ground: { items, settings } }) => {
    const { toBuy } = costOf(pricedLines(carriedItems(scenario, items)), settings);
    return toBuy.minor > 0 ? ['cost'] : nothingMoved;
  },
  // The cost of a kit is all that its prices move, and that is reckoned.
  at: (inputs) => inputs,
  reckoned: ({ values }, factor) => ({ cost: values.cost * factor }),
};

/** The widest gap that is tried, days. */
const widestGapDays = 14;

const daysBetweenWalls: AssumptionRange = {
  id: 'days-between-walls',
  name: 'Days between walls',
  scale: 'days',
  source: `1 to ${widestGapDays} days, evenly over the tour; day stops as planned`,
  absent: 'the tour has one day only',
  span: ({ ground }) => gapSpan(ground.tour),
  // The most days without a wall are those of the kit: they look at no planned night.
  moves: (_, { ground }) => (tourDays(ground.tour) > 1 ? ['margin', 'risk'] : nothingMoved),
  at: (inputs, gapDays) => withTour(inputs, (tour) => withWallEvery(tour, gapDays)),
};

/** Planned nights seldom come evenly: the plan is no point of the range, and its mean gap is most like it. */
function gapSpan(tour: Tour): Span {
  const days = tourDays(tour);
  const high = Math.min(widestGapDays, days);
  const start = Math.round(days / (plannedWallNights(tour) + 1));
  return { low: 1, high, base: null, start: Math.min(high, Math.max(1, start)), whole: true };
}

/** Nights with a wall or a post; what comes after the last day charges nothing for the tour. */
function plannedWallNights({ legs }: Tour): number {
  return legs
    .flatMap(({ days, nights }) => Array.from({ length: days }, (_, night) => nightOf(nights, night)))
    .slice(0, -1)
    .filter((kind) => kind !== 'none').length;
}

export const planRanges: readonly AssumptionRange[] = [price, daysBetweenWalls];
