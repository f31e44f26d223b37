/** A piece of a course as it is ridden. */
export interface RiddenPiece {
  readonly km: number;
  readonly hours: number;
  /** At the converter's plug. */
  readonly plugWh: number;
}

/** One stage: its mean speed, and mean power at the plug while riding, W. */
export interface Stage {
  readonly speedKmh: number;
  readonly plugW: number;
}

/**
 * Parts the pieces, in their order, into stages of equal riding time. Within a piece pace and power are its means. What the
 * pieces add up to is kept.
 *
 * @param pieces at least one, hours above 0
 * @param stages 1 or more
 */
export function splitByTime(pieces: readonly RiddenPiece[], stages: number): readonly Stage[] {
  const stageHours = pieces.reduce((sum, { hours }) => sum + hours, 0) / stages;
  const ends: number[] = [];
  pieces.forEach(({ hours }, index) => ends.push((ends[index - 1] ?? 0) + hours));
  return Array.from({ length: stages }, (_, stage) => {
    const from = stage * stageHours;
    const to = from + stageHours;
    let km = 0;
    let plugWh = 0;
    pieces.forEach((piece, index) => {
      const start = ends[index]! - piece.hours;
      const within = Math.min(to, ends[index]!) - Math.max(from, start);
      if (within <= 0) return;
      km += (piece.km * within) / piece.hours;
      plugWh += (piece.plugWh * within) / piece.hours;
    });
    return { speedKmh: km / stageHours, plugW: plugWh / stageHours };
  });
}
