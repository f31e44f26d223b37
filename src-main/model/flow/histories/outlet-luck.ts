import { randomStreams, uniform } from '../../random.ts';

/** Parts the luck of a seed from its weather. */
const luckSalt = 0x6f75_746c;

/**
 * Draws, for each history, at which day stops the outlet is there and free. The same seed gives the same luck, and more
 * histories leave the first ones as they were.
 *
 * @param chances of the stops of the whole tour in order, 0..1
 * @returns by history, an entry a stop: 1 or 0
 */
export function drawOutletLuck(
  chances: Float64Array,
  histories: number,
  seed: number,
): readonly Uint8Array[] {
  const streams = randomStreams(seed ^ luckSalt);
  return Array.from({ length: histories }, () => {
    const stream = streams.next().value;
    return Uint8Array.from(chances, (chance) => (uniform(stream) < chance ? 1 : 0));
  });
}
