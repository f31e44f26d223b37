import { largestUseFactor } from '../../model/flow/margin.ts';
import { travellingItems } from '../assemble/kit.ts';
import type { AssumptionRange } from './assumption-range.ts';
import { energyCriteria, factors, fromPractice, nothingMoved } from './range-parts.ts';
import { carries, withItems, withLosses, withLuck, withTour, withUse } from './varied-inputs.ts';

/* What every kit rests on: its rider, its walls, its banks and what the devices use. */

const riderPower: AssumptionRange = {
  id: 'rider-power',
  name: 'Rider power',
  scale: 'factor',
  source: fromPractice,
  absent: 'no scenario compared has a generator hub',
  span: () => factors(0.8, 1.2),
  moves: (scenario, inputs) =>
    carries(scenario, inputs, 'generator-hub') ? [...energyCriteria, 'minutesLost'] : ['minutesLost'],
  at: (inputs, factor) => withTour(inputs, (tour) => ({ ...tour, riderW: tour.riderW * factor })),
};

const outletLuck: AssumptionRange = {
  id: 'outlet-luck',
  name: 'Outlets at day stops',
  scale: 'luck',
  source: 'from never to always',
  absent: 'no day stop of the tour has an outlet',
  span: () => ({ low: -1, high: 1, base: 0, start: 0, whole: false }),
  moves: (_, { ground }) =>
    ground.tour.legs.some(({ dayStops }) => dayStops.some(({ outlets }) => outlets > 0))
      ? energyCriteria
      : nothingMoved,
  at: (inputs, luck) => withTour(inputs, (tour) => withLuck(tour, luck)),
};

const bankLosses: AssumptionRange = {
  id: 'bank-losses',
  name: 'Losses of the banks',
  scale: 'factor',
  source: fromPractice,
  absent: 'no scenario compared carries a bank',
  span: () => factors(0.5, 1.5),
  moves: (scenario, inputs) => (carries(scenario, inputs, 'bank') ? energyCriteria : nothingMoved),
  at: (inputs, factor) => withItems(inputs, (item) => withLosses(item, factor)),
};

const deviceUse: AssumptionRange = {
  id: 'device-use',
  name: 'Device use',
  scale: 'factor',
  source: fromPractice,
  absent: 'no device comes along',
  span: () => factors(0.75, 1.25),
  moves: (_, { ground: { items, tour } }) =>
    travellingItems(items, tour.leftAtHome).length > 0 ? energyCriteria : nothingMoved,
  at: (inputs, factor) => withItems(inputs, (item) => withUse(item, factor)),
  reckoned: ({ values, capped }, factor) =>
    capped ? null : { margin: marginWithUse(values.margin, factor) },
};

/** The margin is a factor on all use: with so much more use so much less of it is left. None above the largest is told. */
function marginWithUse(margin: number, factor: number): number {
  return Math.min(largestUseFactor, (1 + margin) / factor) - 1;
}

export const energyRanges: readonly AssumptionRange[] = [riderPower, outletLuck, bankLosses, deviceUse];
