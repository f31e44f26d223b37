/** All the way up and all the way down of a track, m. */
export interface Climb {
  readonly ascentM: number;
  readonly descentM: number;
}

/** Adds up the rises and falls between nodes. A leap in height between two segments is not among them and counts for nothing. */
export function climbOf(riddenM: Float64Array): Climb {
  let ascentM = 0;
  let descentM = 0;
  for (let node = 1; node < riddenM.length; node += 1) {
    const riseM = riddenM[node]! - riddenM[node - 1]!;
    if (riseM > 0) ascentM += riseM;
    else descentM -= riseM;
  }
  return { ascentM, descentM };
}
