import type { RiddenTrack } from './ridden-track.ts';

/** A rise or fall counts once it is this high since the last turn: less is a bridge or a wavering height. Common practice, no source. */
export const deadBandM = 3;

/** All the way up and all the way down of a track, m. */
export interface Climb {
  readonly ascentM: number;
  readonly descentM: number;
}

/**
 * Adds up the rises and falls between the turns of a track, leaving out those within the dead band. A step in height between
 * two segments was not ridden and counts for nothing.
 */
export function climbOf(track: RiddenTrack, heightsM: Float64Array): Climb {
  const turns = createTurns();
  let levelM = 0;
  for (const { firstNode, steps } of track.segments) {
    for (let node = firstNode; node < firstNode + steps; node += 1) {
      levelM += heightsM[node + 1]! - heightsM[node]!;
      passLevel(turns, levelM);
    }
  }
  return { ascentM: turns.ascentM, descentM: turns.descentM };
}

/** Lowest and highest since the last turn, which way it goes since then, and what has been counted. */
interface Turns {
  lowM: number;
  highM: number;
  heading: 'up' | 'down' | null;
  ascentM: number;
  descentM: number;
}

function createTurns(): Turns {
  return { lowM: 0, highM: 0, heading: null, ascentM: 0, descentM: 0 };
}

function passLevel(turns: Turns, levelM: number): void {
  if (turns.heading === 'up' && levelM > turns.highM) climbTo(turns, turns.highM, levelM);
  else if (turns.heading === 'down' && levelM < turns.lowM) dropTo(turns, turns.lowM, levelM);
  else if (turns.heading !== 'up' && levelM - turns.lowM > deadBandM) climbTo(turns, turns.lowM, levelM);
  else if (turns.heading !== 'down' && turns.highM - levelM > deadBandM) dropTo(turns, turns.highM, levelM);
  else if (turns.heading === null) {
    turns.lowM = Math.min(turns.lowM, levelM);
    turns.highM = Math.max(turns.highM, levelM);
  }
}

function climbTo(turns: Turns, fromM: number, levelM: number): void {
  turns.heading = 'up';
  turns.ascentM += levelM - fromM;
  turns.highM = levelM;
}

function dropTo(turns: Turns, fromM: number, levelM: number): void {
  turns.heading = 'down';
  turns.descentM += fromM - levelM;
  turns.lowM = levelM;
}
