import type { RandomStream } from '../../random.ts';

/** What is known of the sky of one day before it is drawn. */
export interface ExpectedDay {
  /** Monthly mean clearness, 0..1. */
  readonly mean: number;
  /** Clearness of a cloudless day: none is drawn above it. */
  readonly most: number;
}

/** Writes one course of daily clearness, a value a day, from `at` on. */
export type DrawSky = (stream: RandomStream, out: Float64Array, at: number) => void;

/** How the clearness of days follows on each other. */
export type SkyLaw =
  | {
      readonly method: 'distribution';
      /** Correlation of one day with the next, before it is bent into the distribution; 0..0.9. */
      readonly persistence: number;
    }
  | { readonly method: 'transitions' };
