import type { Network } from '../network.ts';
import { from, sources, type StepState } from '../step-state.ts';

/** Where the energy in a bank came from: what it held at the start of the tour, then the sources in their order. */
const origins = 1 + sources.length;

/** Place of each origin among the shares of a bank. */
export const originOf = { start: 0, wall: 1 + from.wall, panel: 1 + from.panel, hub: 1 + from.hub } as const;

/**
 * Keeps apart what is in each bank by where it came from. What came in during a day mixes with what was there; what goes
 * out is of the mixture.
 */
export class BankOrigins {
  readonly #network: Network;
  /** By bank and origin: in the cells, Wh. */
  readonly #heldWh: Float64Array;
  readonly #shares: Float64Array;

  constructor(network: Network) {
    this.#network = network;
    this.#heldWh = new Float64Array(network.bankCount * origins);
    this.#shares = new Float64Array(network.bankCount * origins);
  }

  /** At the start of a tour. */
  reset({ storedWh }: StepState): void {
    const { bankCount, deviceCount } = this.#network;
    this.#heldWh.fill(0);
    for (let b = 0; b < bankCount; b += 1) this.#heldWh[b * origins] = storedWh[deviceCount + b]!;
  }

  /** Takes in what came into the banks during a day. */
  mix({ takenWh }: StepState): void {
    const { bankCount, deviceCount, sinkCount, efficiencyIn } = this.#network;
    for (let b = 0; b < bankCount; b += 1) {
      const sink = deviceCount + b;
      let allWh = this.#heldWh[b * origins]!;
      for (let source = 0; source < sources.length; source += 1) {
        const at = b * origins + 1 + source;
        this.#heldWh[at]! += takenWh[source * sinkCount + sink]! * efficiencyIn[sink]!;
        allWh += this.#heldWh[at]!;
      }
      for (let origin = 0; origin < origins; origin += 1) {
        const at = b * origins + origin;
        this.#shares[at] = allWh > 0 ? this.#heldWh[at]! / allWh : 0;
      }
    }
  }

  /** Share of what a bank gave on the day just mixed that came from an origin, 0..1. */
  share(bank: number, origin: number): number {
    return this.#shares[bank * origins + origin]!;
  }

  /** Leaves in the banks what they hold at the end of the day. */
  keep({ storedWh }: StepState): void {
    const { bankCount, deviceCount } = this.#network;
    for (let at = 0; at < bankCount * origins; at += 1)
      this.#heldWh[at] = storedWh[deviceCount + Math.floor(at / origins)]! * this.#shares[at]!;
  }
}
