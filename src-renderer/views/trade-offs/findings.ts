import type { Comparison, DayLedger, ScenarioResult } from '../../../shared-types/comparison.ts';
import { percent, wattHours } from '../../../shared-types/figures.ts';

/** Less than this is rounding, not a finding, Wh. */
const worthSayingWh = 0.05;

/** What the chart of stored energy shows about the scenario that ranks first. */
export function storedFinding({ scenarios }: Comparison, locale?: string): string {
  const [best] = scenarios;
  if (best === undefined) return 'No scenario to show';
  const short = best.firstShort;
  if (short !== null) return `With ${best.label}, ${short.device} runs flat on day ${short.day}`;
  if (best.lowestStoredWh < worthSayingWh)
    return `${best.label} uses up all it stores, with no must-have flat`;
  return `Stored energy never falls below ${wattHours(best.lowestStoredWh, locale)} with ${best.label}`;
}

const sources = ['wall', 'panel', 'hub'] as const;
export type Source = (typeof sources)[number];

export const sourceWords: Readonly<Record<Source, string>> = {
  wall: 'Walls',
  panel: 'The panel',
  hub: 'The hub',
};

export function sumOfDays(days: readonly DayLedger[], key: Source | 'unserved' | 'demand'): number {
  return days.reduce((sum, day) => sum + day[key], 0);
}

/** What the daily ledger shows: what is missing if anything is, else where the energy comes from. */
export function ledgerFinding({ days }: ScenarioResult, locale?: string): string {
  const missing = sumOfDays(days, 'unserved');
  if (missing >= worthSayingWh) {
    const short = days.filter((day) => day.unserved >= worthSayingWh).length;
    return `${wattHours(missing, locale)} cannot be served, on ${short} of ${days.length} days`;
  }
  return sourceFinding(days, locale);
}

function sourceFinding(days: readonly DayLedger[], locale?: string): string {
  const sums = sources.map((source) => ({ source, sum: sumOfDays(days, source) }));
  const total = sums.reduce((all, { sum }) => all + sum, 0);
  const [main] = sums.toSorted((one, other) => other.sum - one.sum);
  if (main === undefined || total < worthSayingWh)
    return 'Nothing comes in: the tour lives on what was stored';
  const verb = main.source === 'wall' ? 'give' : 'gives';
  return `${sourceWords[main.source]} ${verb} ${percent(main.sum / total, { locale })} of the energy taken in`;
}
