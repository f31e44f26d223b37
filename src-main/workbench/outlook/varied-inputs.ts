import type { Item, ItemKind } from '../../../shared-types/item.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { DayStop, Tour } from '../../../shared-types/tour.ts';
import { carriedItems } from '../assemble/kit.ts';
import type { SwingInputs } from './assumption-range.ts';

/* A comparison's inputs with one thing otherwise. */

export function withTour(inputs: SwingInputs, change: (tour: Tour) => Tour): SwingInputs {
  return { ...inputs, ground: { ...inputs.ground, tour: change(inputs.ground.tour) } };
}

export function withItems(inputs: SwingInputs, change: (item: Item) => Item): SwingInputs {
  return { ...inputs, ground: { ...inputs.ground, items: inputs.ground.items.map(change) } };
}

/** Whether a scenario carries an item of a kind. */
export function carries(scenario: Scenario, { ground }: SwingInputs, kind: ItemKind): boolean {
  return carriedItems(scenario, ground.items).some(({ item }) => item.kind === kind);
}

/** A bank never gives or takes less than this share, whatever its losses are multiplied by (our choice). */
const leastEfficiency = 0.05;

/** Losses in and out of a bank, multiplied; a measured delivery stays what it is. */
export function withLosses(item: Item, factor: number): Item {
  if (item.kind !== 'bank') return item;
  const lossy = (efficiency: number): number => Math.max(leastEfficiency, 1 - (1 - efficiency) * factor);
  return { ...item, efficiencyIn: lossy(item.efficiencyIn), efficiencyOut: lossy(item.efficiencyOut) };
}

/** All that a device uses, multiplied. */
export function withUse(item: Item, factor: number): Item {
  if (item.kind !== 'device') return item;
  const { use } = item;
  if (use.as === 'day') return { ...item, use: { ...use, whPerDay: use.whPerDay * factor } };
  const { ridingW, stopW, eveningW, nightW } = use;
  return {
    ...item,
    use: {
      as: 'activity',
      ridingW: ridingW * factor,
      stopW: stopW * factor,
      eveningW: eveningW * factor,
      nightW: nightW * factor,
    },
  };
}

/** The chance of every outlet at a day stop, moved the given way to never (down to -1) or to always (up to 1). */
export function withLuck(tour: Tour, luck: number): Tour {
  const moved = ({ chance }: DayStop): number =>
    luck < 0 ? chance * (1 + luck) : chance + (1 - chance) * luck;
  return {
    ...tour,
    legs: tour.legs.map((leg) => ({
      ...leg,
      dayStops: leg.dayStops.map((stop) => ({ ...stop, chance: moved(stop) })),
    })),
  };
}

/** The rack factor of every scenario. */
export function withRackFactor(inputs: SwingInputs, rackFactor: number): SwingInputs {
  return {
    ...inputs,
    scenarios: inputs.scenarios.map((scenario) => ({
      ...scenario,
      placement: { ...scenario.placement, rackFactor },
    })),
  };
}
