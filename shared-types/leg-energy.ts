import type { DayLedger, ScenarioResult } from './comparison.ts';
import type { Flow } from './flows.ts';

/**
 * Where the energy of a leg comes from and goes, on a mean day of it, the mean over the histories, Wh at the plug. Panel and hub
 * are what they have to give before any of it is spilled: the same as `panelWh` and `hubWh` of its `LegYield`, to rounding.
 */
export interface LegEnergy extends Pick<DayLedger, Flow> {
  readonly leg: string;
  readonly days: number;
}

/** The days of a scenario's ledger by leg, in the order of the tour. */
export function legEnergies({ legs, days }: Pick<ScenarioResult, 'legs' | 'days'>): readonly LegEnergy[] {
  let first = 0;
  return legs.map(({ leg, days: count }) => {
    const onLeg = days.slice(first, first + count);
    first += count;
    return { leg, days: count, ...meanDay(onLeg, count) };
  });
}

function meanDay(ledgers: readonly DayLedger[], days: number): Pick<DayLedger, Flow> {
  const mean = (flow: Flow): number => ledgers.reduce((sum, ledger) => sum + ledger[flow], 0) / days;
  return {
    ...{ demand: mean('demand'), wall: mean('wall'), panel: mean('panel'), hub: mean('hub') },
    ...{ lost: mean('lost'), spilled: mean('spilled'), unserved: mean('unserved') },
  };
}
