import { aloneAt } from './alone.ts';
import type { StopProblem } from './problem.ts';

/** What things cost in the unit of weighed worth: an hour on a port of each class, and energy. */
export interface Prices {
  readonly portAnHour: readonly number[];
  /** Drawn from the chargers, whose totals may be less than their ports could give. */
  readonly wallAWh: number;
  /** Taken from the banks later. */
  readonly bankAWh: number;
}

/** What is asked of the plugs and of the banks. */
export interface Demand {
  /** By class of ports. */
  readonly portHours: number[];
  /** Drawn from the wall. */
  wallWh: number;
  /** Of bank energy, as far as it is worth its price: more than the banks will hold when above 0. */
  bankWh: number;
}

/** An upper limit of what can still be made of a state. */
export interface Bound {
  /** @returns weighed worth that no way through the slots from this one on exceeds */
  of(state: readonly number[], slot: number): number;
  /** What the stores, each alone, would want from the first slot on. */
  wanted(state: readonly number[]): Demand;
}

/**
 * Lagrangian relaxation: every port is for rent and every Wh from the wall is paid for, and each store, alone in the world,
 * hangs where it pays most and takes as much as it likes. Rents for all there is, plus what the stores make of it, is never
 * less than the best plan, whatever the prices; the closer they are to what things are worth, the tighter.
 */
export function boundAt(problem: StopProblem, prices: Prices): Bound {
  const { stores, plugs, hoursLeft } = problem;
  const alone = stores.map((_, place) => aloneAt(problem, place, prices));
  const rentAnHour =
    plugs.classes.reduce((sum, { count }, c) => sum + count * prices.portAnHour[c]!, 0) +
    plugs.mostW * prices.wallAWh;
  return {
    of: (state, slot) => {
      let total = rentAnHour * hoursLeft[slot]!;
      for (let store = 0; store < state.length; store += 1) total += alone[store]!.makes(state[store]!, slot);
      return total;
    },
    wanted: (state) => {
      const wanted = { portHours: plugs.classes.map(() => 0), wallWh: 0, bankWh: 0 };
      state.forEach((level, store) => alone[store]!.addWanted(level, wanted));
      return wanted;
    },
  };
}
