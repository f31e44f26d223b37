import { randomStreams, uniform } from '../../src-main/model/random.ts';

/** What chance decides in a test: the same for the same seed. */
export interface Dice {
  /** Uniform in 0 to `most`. */
  below(most: number): number;
  /** A whole number in 0 to `most`, which is left out. */
  count(most: number): number;
  oneOf<T>(choices: readonly T[]): T;
  /** Up to `most` of them, each once. */
  someOf<T>(choices: readonly T[], most: number): readonly T[];
}

export function diceOf(seed: number): Dice {
  const stream = randomStreams(seed).next().value;
  const below = (most: number): number => uniform(stream) * most;
  const count = (most: number): number => Math.floor(below(most));
  return {
    below,
    count,
    oneOf: (choices) => choices[count(choices.length)]!,
    someOf: (choices, most) => {
      const left = [...choices];
      const wanted = Math.min(left.length, 1 + count(most));
      return Array.from({ length: wanted }, () => left.splice(count(left.length), 1)[0]!);
    },
  };
}
