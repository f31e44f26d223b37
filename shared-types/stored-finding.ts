import type { Comparison } from './comparison.ts';
import { wattHours } from './figures.ts';
import { firstShortText, riskText } from './history-words.ts';

/** Less than this is rounding, not a finding, Wh. */
const worthSayingWh = 0.05;

/** What the chart of stored energy shows about the scenario that ranks first. */
export function storedFinding({ scenarios, histories }: Comparison, locale?: string): string {
  const [best] = scenarios;
  if (best === undefined) return 'No scenario to show';
  const { label, risk, firstShort, reserveWh } = best;
  if (firstShort !== null)
    return `With ${label} ${riskText(risk, histories, locale)}, ${firstShortText(firstShort)}`;
  if (reserveWh.p10 < worthSayingWh)
    return `${label} uses up all it stores in some histories, with no must-have flat`;
  return `${label} keeps ${wattHours(reserveWh.p10, locale)} or more in store in 90 of 100 histories`;
}
