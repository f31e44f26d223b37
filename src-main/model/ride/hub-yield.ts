import type { GeneratorWheel } from './hub.ts';

/**
 * A generator wheel whose yield the rider measured: its power at the plug times that share, still within what the converter
 * gives.
 *
 * Its drag stays as it is. A meter at the plug sees watts, not what the legs pay for them: a loss in converter or cable costs
 * the same drag as before, and a weaker hub drags less by 1 to 2 W at most, which errs on the side of the rider's time. So a
 * measured yield moves energy and never the speed.
 *
 * @param share of what rating or curve promise at the plug, above 0
 * @param outputW most that the converter gives; a curve read at the plug may lie above it and is then the limit
 */
export function yielding(wheel: GeneratorWheel, share: number, outputW: number): GeneratorWheel {
  return {
    ...wheel,
    plugW: (speedKmh) => {
      const promisedW = wheel.plugW(speedKmh);
      return Math.min(promisedW * share, Math.max(promisedW, outputW));
    },
  };
}
