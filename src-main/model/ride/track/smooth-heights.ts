/** A moving mean over this distance, km, so many times. Common practice, no source: see below. */
const windowKm = 0.1;
const passes = 2;

/**
 * Heights at nodes `stepKm` apart, smoothed over distance: a moving mean over about 100 m, twice. Common practice, no source:
 * satellite heights waver by metres within a few seconds, and an altimeter's steps of a metre make slopes of 5 % over 20 m,
 * while roads seldom change their grade within less. The window narrows to both sides alike towards the ends of the track, so
 * that a steady ramp stays exactly what it is and smoothing never adds climb.
 */
export function smoothHeights(heightsM: Float64Array, stepKm: number): Float64Array {
  let smoothM = heightsM;
  for (let pass = 0; pass < passes; pass += 1) smoothM = movingMean(smoothM, stepKm);
  return smoothM;
}

function movingMean(heightsM: Float64Array, stepKm: number): Float64Array {
  const last = heightsM.length - 1;
  // A mean of an odd number of nodes, each standing for one step.
  const widest = Math.max(0, Math.round((windowKm / stepKm - 1) / 2));
  const meansM = new Float64Array(heightsM.length);
  for (let node = 0; node <= last; node += 1) {
    const reach = Math.min(widest, node, last - node);
    let sumM = 0;
    for (let near = node - reach; near <= node + reach; near += 1) sumM += heightsM[near]!;
    meansM[node] = sumM / (2 * reach + 1);
  }
  return meansM;
}
