import { ofMustHaves, useAtPlugWh, type DaySpan } from './plug-use.ts';
import type { RulesGround } from './rules-ground.ts';

/** Days from one expected wall to the next, and what devices use on them while no wall is near. */
export interface Stretch extends DaySpan {
  /** By device, Wh at the plug. */
  readonly deviceWh: readonly number[];
  /** What panel and hub have to give over those days, the mean over the histories, Wh at their plugs. */
  readonly sourcesWh: number;
}

type StretchGround = Pick<RulesGround, 'ready' | 'days'>;

/** The most days without an expected wall; of equals the one on which the must-haves use most, then the first. */
export function longestStretch(ground: StretchGround): Stretch {
  const { days } = ground.ready.course;
  const stretches = spansOf(wallDays(ground), days).map((span) => stretchOf(span, ground));
  return stretches.reduce((longest, stretch) => (isHarder(stretch, longest, ground) ? stretch : longest));
}

/** Days, from 0, whose night has a wall at which this kit fills something. */
export function wallDays({ ready }: Pick<StretchGround, 'ready'>): readonly number[] {
  const { days, stepsPerDay } = ready.course;
  return Array.from({ length: days }, (_, day) => day).filter((day) =>
    isAtWall((day + 1) * stepsPerDay - 1, ready),
  );
}

/** A day stop may be taken, so it is not counted on; at a post where only banks are plugged in, a kit without one fills nothing. */
function isAtWall(step: number, { network, course }: StretchGround['ready']): boolean {
  const isCertain = course.outlets[step]! > 0 && course.luck[step]! < 0;
  const fillsNothing = network.banksOnlyAtPost && network.bankCount === 0 && course.atPost[step] === 1;
  return network.portCount > 0 && isCertain && !fillsNothing;
}

/** The tour starts at home with all full; a stretch ends on the evening of the next wall, or with the tour. */
function spansOf(walls: readonly number[], days: number): readonly DaySpan[] {
  const lastDays = walls.at(-1) === days - 1 ? walls : [...walls, days - 1];
  return lastDays.map((lastDay, at) => ({ firstDay: at === 0 ? 0 : lastDays[at - 1]! + 1, lastDay }));
}

function stretchOf(span: DaySpan, { ready, days }: StretchGround): Stretch {
  return {
    ...span,
    deviceWh: useAtPlugWh(ready, span, (step) => !isAtWall(step, ready)),
    sourcesWh: days
      .slice(span.firstDay, span.lastDay + 1)
      .reduce((sum, { panel, hub }) => sum + panel + hub, 0),
  };
}

function isHarder(one: Stretch, other: Stretch, { ready }: StretchGround): boolean {
  const daysMore = one.lastDay - one.firstDay - (other.lastDay - other.firstDay);
  if (daysMore !== 0) return daysMore > 0;
  return ofMustHaves(ready, one.deviceWh) > ofMustHaves(ready, other.deviceWh);
}
