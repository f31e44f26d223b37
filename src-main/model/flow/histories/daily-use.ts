import { randomStreams, standardNormal, type RandomStream } from '../../random.ts';

/**
 * Draws, for each history, by how much each day's use of each device strays from the plan: lognormal, so never below 0,
 * with a mean of 1. A device's draws hang on its key alone, so that another device leaves them as they were.
 *
 * @param keys of the devices, in the order of the entries
 * @param spread standard deviation over mean, 0 or more
 * @returns by history: entry `day * devices + device`
 */
export function drawDailyUse(
  keys: readonly string[],
  days: number,
  spread: number,
  histories: number,
  seed: number,
): readonly Float32Array[] {
  const streams = keys.map((key) => randomStreams(seed ^ hashOf(key)));
  const logVariance = Math.log(1 + spread * spread);
  const logDeviation = Math.sqrt(logVariance);
  return Array.from({ length: histories }, () => {
    const ofHistory = streams.map((each) => each.next().value);
    const draw = (stream: RandomStream): number =>
      Math.exp(logDeviation * standardNormal(stream) - logVariance / 2);
    return Float32Array.from({ length: days * keys.length }, (_, at) => draw(ofHistory[at % keys.length]!));
  });
}

/** FNV-1a (Fowler, Noll, Vo; IETF draft-eastlake-fnv), 32 bits. */
function hashOf(text: string): number {
  const [offsetBasis, prime] = [0x811c_9dc5, 0x0100_0193];
  let hash = offsetBasis;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), prime);
  return hash;
}
