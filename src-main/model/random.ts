import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { JumpableRandomGenerator } from 'pure-rand/types/JumpableRandomGenerator';

/** A stream of random numbers; every draw moves it on. */
export type RandomStream = JumpableRandomGenerator;

/**
 * Streams that never overlap, one after the other: the first of a seed is the same whatever the number of streams, so that
 * more histories leave the earlier ones as they were.
 */
export function* randomStreams(seed: number): Generator<RandomStream, never> {
  const generator = xoroshiro128plus(seed);
  for (;;) {
    yield generator.clone();
    generator.jump();
  }
}

/** Uniform in 0 (included) to 1 (excluded). */
export function uniform(stream: RandomStream): number {
  return uniformFloat64(stream);
}

/** Standard normal (Box & Muller 1958, Annals of Mathematical Statistics 29(2):610-611). */
export function standardNormal(stream: RandomStream): number {
  const distance = Math.sqrt(-2 * Math.log(1 - uniform(stream)));
  return distance * Math.cos(2 * Math.PI * uniform(stream));
}
