import type { MapGrid } from '../../model/judge/break-even-map.ts';

/** How a map is drawn: which tours, and how finely each is walked. */
export interface MapPlan extends MapGrid {
  readonly histories: number;
  readonly stepMinutes: '5' | '15' | '30' | '60';
}

/**
 * From an overnight tour to a season. Fewer histories than a comparison takes and steps of an hour: a map has hundreds of tours, and
 * is to be there in seconds.
 */
export const usualMapPlan: MapPlan = {
  days: [2, 3, 4, 5, 7, 10, 14, 21, 30, 45, 60, 90],
  gapsDays: [1, 2, 3, 4, 5, 7, 10, 14],
  histories: 60,
  stepMinutes: '60',
};

/** The gaps that make different tours of so many days: all that put a wall on the way, and one that puts none. */
export function differentGaps({ gapsDays }: Pick<MapGrid, 'gapsDays'>, days: number): readonly number[] {
  const noWall = gapsDays.find((gap) => gap >= days);
  const some = gapsDays.filter((gap) => gap < days);
  return noWall === undefined ? some : [...some, noWall];
}
