/**
 * Share of the capacity at 25 degC that a cell gives up at lower temperatures: discharges at 0.3C to 2.5 V of one 2.9 Ah
 * cell in a climate chamber (Kollmeyer 2018, doi 10.17632/wykht8y7tg.1). Faster discharge in the cold gives less.
 */
const given = [
  { degC: -20, share: 0.789 },
  { degC: -10, share: 0.838 },
  { degC: 0, share: 0.884 },
  { degC: 10, share: 0.936 },
  { degC: 25, share: 1 },
] as const;

/** Below the coldest measurement nothing is known to come out, and chargers and devices switch off. */
const coldestDegC = given[0].degC;

/**
 * Share of its capacity that a cell gives up at a temperature, 0..1: straight lines between the measured ones, all of it
 * above 25 degC, nothing below -20 degC.
 */
export function usableShare(cellDegC: number): number {
  if (!(cellDegC >= coldestDegC)) return 0;
  for (let above = 1; above < given.length; above += 1) {
    const [low, high] = [given[above - 1]!, given[above]!];
    if (cellDegC > high.degC) continue;
    return low.share + ((high.share - low.share) * (cellDegC - low.degC)) / (high.degC - low.degC);
  }
  return 1;
}
