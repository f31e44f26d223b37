import { uniform, type RandomStream } from '../../random.ts';
import type { DrawSky, ExpectedDay } from './sky-law.ts';
import { transitionLibrary, type TransitionClass } from './transition-library.ts';

/** States of each class. */
const states = 10;
/** Steps after which a chain has forgotten its start to rounding: the slowest class halves its memory in under a day. */
const settlingSteps = 200;

/** A class made ready to draw from: cumulative rows, and the share of days in each state in the long run. */
export interface TransitionChain {
  readonly dullest: number;
  readonly clearest: number;
  /** Row by row; the last entry of each row is 1. */
  readonly cumulative: Float64Array;
  readonly stationary: Float64Array;
  readonly stationaryCumulative: Float64Array;
}

const chains = new Map<TransitionClass, TransitionChain>();

/** The chain of the class that a mean clearness falls in. */
export function chainOf(meanClearness: number): TransitionChain {
  const found = transitionLibrary.find(({ upTo }) => meanClearness <= upTo)!;
  const known = chains.get(found) ?? makeChain(found);
  chains.set(found, known);
  return known;
}

function makeChain({ dullest, clearest, thousandths }: TransitionClass): TransitionChain {
  const rows = thousandths.map((row) => {
    const sum = row.reduce((all, each) => all + each, 0);
    return row.map((each) => each / sum);
  });
  const stationary = stationaryOf(rows);
  return {
    dullest,
    clearest,
    cumulative: Float64Array.from(rows.flatMap(cumulated)),
    stationary: Float64Array.from(stationary),
    stationaryCumulative: Float64Array.from(cumulated(stationary)),
  };
}

function stationaryOf(rows: readonly (readonly number[])[]): readonly number[] {
  let shares: readonly number[] = Array.from({ length: states }, () => 1 / states);
  for (let i = 0; i < settlingSteps; i += 1)
    shares = shares.map((_, to) => rows.reduce((sum, row, from) => sum + shares[from]! * row[to]!, 0));
  return shares;
}

function cumulated(shares: readonly number[]): number[] {
  let sum = 0;
  const rising = shares.map((share) => (sum += share));
  return rising.map((each, state) => (state === states - 1 ? 1 : each));
}

/** What one day draws from. */
interface DayChain {
  readonly chain: TransitionChain;
  readonly clearest: number;
  /** Bends the place within the range so that the long-run mean is the month's own. */
  readonly power: number;
}

/**
 * Days drawn from the transition library: the class by the month's mean, the row by yesterday's state, uniform within a state.
 *
 * The library steps by 0.05 of mean clearness and its classes keep their own means; the place of a day within the range is
 * raised to a power that makes the long-run mean the month's own. Rising powers keep the order of days, and so their runs.
 */
export function transitionSky(days: readonly ExpectedDay[]): DrawSky {
  const dayChains = days.map(dayChainOf);
  return (stream, out, at) => {
    let state = -1;
    for (let day = 0; day < dayChains.length; day += 1) {
      const { chain, clearest, power } = dayChains[day]!;
      state =
        state < 0
          ? drawState(stream, chain.stationaryCumulative, 0)
          : drawState(stream, chain.cumulative, state * states);
      const place = (state + uniform(stream)) / states;
      out[at + day] = chain.dullest + (clearest - chain.dullest) * place ** power;
    }
  };
}

function drawState(stream: RandomStream, cumulative: Float64Array, row: number): number {
  const share = uniform(stream);
  let state = 0;
  while (state < states - 1 && share >= cumulative[row + state]!) state += 1;
  return state;
}

/** Powers tried: beyond them nearly every day is at one end of the range. */
const powers = { least: 1 / 64, most: 64 } as const;
const halvings = 50;

function dayChainOf({ mean, most }: ExpectedDay): DayChain {
  const chain = chainOf(mean);
  const clearest = Math.min(most, chain.clearest);
  if (mean >= clearest || mean <= chain.dullest || clearest <= chain.dullest)
    return { chain: { ...chain, dullest: Math.min(mean, most) }, clearest: Math.min(mean, most), power: 1 };
  const wanted = (mean - chain.dullest) / (clearest - chain.dullest);
  let [low, high] = [Math.log(powers.least), Math.log(powers.most)];
  for (let i = 0; i < halvings; i += 1) {
    const middle = (low + high) / 2;
    if (meanPlace(chain, Math.exp(middle)) > wanted) low = middle;
    else high = middle;
  }
  return { chain, clearest, power: Math.exp((low + high) / 2) };
}

/** Long-run mean of a place in 0..1 raised to a power, places being uniform within each state. */
function meanPlace({ stationary }: TransitionChain, power: number): number {
  const upTo = (state: number): number => (state / states) ** (power + 1) / (power + 1);
  return stationary.reduce((sum, share, state) => sum + share * states * (upTo(state + 1) - upTo(state)), 0);
}
