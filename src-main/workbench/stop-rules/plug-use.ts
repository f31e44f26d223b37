import type { ReadyScenario } from '../simulate-scenario.ts';
import type { RulesGround } from './rules-ground.ts';

type Walked = Pick<ReadyScenario, 'network' | 'course'>;

/** A row of days of a tour, counted from 0. */
export interface DaySpan {
  readonly firstDay: number;
  readonly lastDay: number;
}

/**
 * What each device asks of the plug that charges it over some days of the plan, Wh: its use, and its own charging loss on top. What it
 * draws only for being plugged in while in use is left out: how long it is, is not planned.
 *
 * @param counts which steps of those days
 */
export function useAtPlugWh(
  { network, course }: Walked,
  { firstDay, lastDay }: DaySpan,
  counts: (step: number) => boolean = () => true,
): readonly number[] {
  const { deviceCount, efficiencyIn } = network;
  const used = new Float64Array(deviceCount);
  const end = (lastDay + 1) * course.stepsPerDay;
  for (let step = firstDay * course.stepsPerDay; step < end; step += 1) {
    if (!counts(step)) continue;
    for (let d = 0; d < deviceCount; d += 1) used[d]! += course.needWh[step * deviceCount + d]!;
  }
  return Array.from(used, (wh, device) => wh / efficiencyIn[device]!);
}

/** A mean day of a leg. */
export interface LegUse {
  readonly leg: string;
  /** By device, Wh at the plug. */
  readonly deviceWh: readonly number[];
  readonly mustHaveWh: number;
  /** What panel and hub have to give, Wh at their plugs. */
  readonly sourcesWh: number;
}

/** The leg on which the must-haves use most a day; the first of equals. */
export function hungriestLeg({ legs, ready }: Pick<RulesGround, 'legs' | 'ready'>): LegUse {
  let firstDay = 0;
  const uses = legs.map(({ leg, days, panelWh, hubWh }): LegUse => {
    const span = { firstDay, lastDay: firstDay + days - 1 };
    firstDay += days;
    const deviceWh = useAtPlugWh(ready, span).map((wh) => wh / days);
    return { leg, deviceWh, mustHaveWh: ofMustHaves(ready, deviceWh), sourcesWh: panelWh + hubWh };
  });
  return uses.reduce((most, use) => (use.mustHaveWh > most.mustHaveWh ? use : most));
}

/** The part of a figure by device that is of must-haves. */
export function ofMustHaves({ network }: Pick<Walked, 'network'>, deviceWh: readonly number[]): number {
  return deviceWh.reduce((sum, wh, device) => sum + wh * network.mustHave[device]!, 0);
}
