/** A rise or fall counts once it is this high since the last turn: less is a bridge or a wavering height. Common practice, no source. */
export const deadBandM = 3;

/**
 * Heights that rise or fall all the way from one turn to the next: what goes back and forth by no more than the dead band is
 * evened out, between the highest before and the lowest after. Turns, start and end keep their heights, so what is ridden up and
 * down is what the turns say, and a slope without a dip stays exactly what it is.
 */
export function dropWavering(heightsM: Float64Array): Float64Array {
  const steadyM = Float64Array.from(heightsM);
  const turns = turnsOf(heightsM);
  for (let turn = 1; turn < turns.length; turn += 1) evenOut(steadyM, turns[turn - 1]!, turns[turn]!);
  return steadyM;
}

/** The first node, those where the way turns up or down for more than the dead band, and the last. */
function turnsOf(heightsM: Float64Array): number[] {
  const turns = [0];
  let heading: 'up' | 'down' | null = null;
  let lowest = 0;
  let highest = 0;
  for (let node = 1; node < heightsM.length; node += 1) {
    const heightM = heightsM[node]!;
    if (heightM < heightsM[lowest]!) lowest = node;
    if (heightM > heightsM[highest]!) highest = node;
    if (heading !== 'up' && heightM - heightsM[lowest]! > deadBandM) {
      turns.push(lowest);
      heading = 'up';
      highest = node;
    } else if (heading !== 'down' && heightsM[highest]! - heightM > deadBandM) {
      turns.push(highest);
      heading = 'down';
      lowest = node;
    }
  }
  if (heading !== null) turns.push(heading === 'up' ? highest : lowest);
  turns.push(heightsM.length - 1);
  return turns;
}

/** Puts each height between two turns half way between the highest so far and the lowest to come, or the other way downhill. */
function evenOut(heightsM: Float64Array, from: number, to: number): void {
  const up = heightsM[to]! >= heightsM[from]! ? 1 : -1;
  const [fromM, toM] = [up * heightsM[from]!, up * heightsM[to]!];
  const toComeM = new Float64Array(to - from + 1);
  let lowestM = toM;
  for (let node = to; node >= from; node -= 1) {
    lowestM = Math.max(fromM, Math.min(lowestM, up * heightsM[node]!));
    toComeM[node - from] = lowestM;
  }
  let highestM = fromM;
  for (let node = from; node <= to; node += 1) {
    highestM = Math.min(toM, Math.max(highestM, up * heightsM[node]!));
    heightsM[node] = (up * (highestM + toComeM[node - from]!)) / 2;
  }
}
