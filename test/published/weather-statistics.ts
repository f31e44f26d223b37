import type { Skies } from '../../src-main/model/sun/history/draw-skies.ts';

export function meanOf(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i += 1) sum += values[i]!;
  return sum / values.length;
}

/** Standard deviation about the values' own mean. */
export function deviationOf(values: ArrayLike<number>): number {
  const mean = meanOf(values);
  let sum = 0;
  for (let i = 0; i < values.length; i += 1) sum += (values[i]! - mean) ** 2;
  return Math.sqrt(sum / values.length);
}

/** Correlation of each day with the next inside the histories; days are counted about `meanOfHistory`. */
function lagOne({ days, histories, clearness }: Skies, meanOfHistory: (history: number) => number): number {
  let [together, alone] = [0, 0];
  for (let history = 0; history < histories; history += 1) {
    const mean = meanOfHistory(history);
    for (let day = 0; day < days; day += 1) {
      const apart = clearness[history * days + day]! - mean;
      alone += apart ** 2;
      if (day > 0) together += apart * (clearness[history * days + day - 1]! - mean);
    }
  }
  return together / (days - 1) / (alone / days);
}

/** Lag-1 about the mean of all days. */
export function lagOneOfAll(skies: Skies): number {
  const mean = meanOf(skies.clearness);
  return lagOne(skies, () => mean);
}

/** Lag-1 about each history's own mean, pooled. */
export function lagOneWithinHistories(skies: Skies): number {
  const { days, clearness } = skies;
  return lagOne(skies, (history) => meanOf(clearness.subarray(history * days, (history + 1) * days)));
}

/** Kolmogorov distance: the most that the share of values below differs from a distribution anywhere. */
export function kolmogorovDistance(values: Float64Array, shareBelow: (value: number) => number): number {
  const sorted = values.toSorted();
  let most = 0;
  sorted.forEach((value, at) => {
    const share = shareBelow(value);
    most = Math.max(most, share - at / sorted.length, (at + 1) / sorted.length - share);
  });
  return most;
}

/** Length of the longest run of days below a clearness, mean over the histories. */
export function meanLongestRun({ days, histories, clearness }: Skies, below: number): number {
  let sum = 0;
  for (let history = 0; history < histories; history += 1) {
    let [run, longest] = [0, 0];
    for (let day = 0; day < days; day += 1) {
      run = clearness[history * days + day]! < below ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    sum += longest;
  }
  return sum / histories;
}

/** The same days with every memory taken out: each day of a history comes from another history. */
export function unlinked({ days, histories, clearness }: Skies): Skies {
  const mixed = clearness.map((_, at) => {
    const [history, day] = [Math.floor(at / days), at % days];
    return clearness[((history + day) % histories) * days + day]!;
  });
  return { days, histories, clearness: mixed };
}
