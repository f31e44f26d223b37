import { randomStreams } from '../../random.ts';
import { persistentSky } from './persistent-sky.ts';
import type { DrawSky, ExpectedDay, SkyLaw } from './sky-law.ts';
import { transitionSky } from './transition-sky.ts';

/** Drawn courses of weather: the clearness of each day, one history after the other. */
export interface Skies {
  readonly days: number;
  readonly histories: number;
  /** Entry `history * days + day`, 0..1. */
  readonly clearness: Float64Array;
}

/**
 * Draws courses of weather. The same seed gives the same courses, and more histories leave the first ones as they were.
 *
 * @param histories at least 1
 */
export function drawSkies(days: readonly ExpectedDay[], law: SkyLaw, histories: number, seed: number): Skies {
  const clearness = new Float64Array(days.length * histories);
  const draw: DrawSky =
    law.method === 'distribution' ? persistentSky(days, law.persistence) : transitionSky(days);
  const streams = randomStreams(seed);
  for (let history = 0; history < histories; history += 1)
    draw(streams.next().value, clearness, history * days.length);
  return { days: days.length, histories, clearness };
}
