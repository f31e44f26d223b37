import type {
  Comparison,
  HubCost,
  HubCostLine,
  LegYield,
  ScenarioResult,
} from '../../shared-types/comparison.ts';
import { unsteadyGivers } from '../../shared-types/history-words.ts';
import { decimalText, gramsText, moneyText, percentText } from './format.ts';

type Minutes = 'massMinutes' | 'dragMinutes' | 'offMinutes';

/** A mean day of the tour, legs weighted by their days, min. */
export function dailyMinutes(legs: readonly LegYield[], of: Minutes): number {
  const days = legs.reduce((sum, leg) => sum + leg.days, 0);
  return days === 0 ? 0 : legs.reduce((sum, leg) => sum + leg[of] * leg.days, 0) / days;
}

const leastSpilledShare = 0.005;

/** What each scenario costs on the road: how much later a mean day ends than without its kit, and what of its sources is spilled. */
export function roadLines({ scenarios }: Comparison): readonly string[] {
  return scenarios.map(
    (scenario) => `${scenario.label}: ${[laterText(scenario), ...spilledTexts(scenario)].join('; ')}.`,
  );
}

function laterText({ legs, hubCost }: ScenarioResult): string {
  const minutes = (of: Minutes): string => decimalText(dailyMinutes(legs, of), 1);
  const grams = `${minutes('massMinutes')} min a day later by its grams`;
  if (hubCost === null) return grams;
  return `${grams}, ${minutes('dragMinutes')} by the hub’s drag, charging (${minutes('offMinutes')} switched off)`;
}

function spilledTexts({ spilledShare, days }: ScenarioResult): readonly string[] {
  if (spilledShare < leastSpilledShare) return [];
  return [`${percentText(spilledShare)} of what ${unsteadyGivers(days)} is spilled`];
}

/** What each scenario's generator hub really costs, part by part, the same hub once; nothing without one. */
export function hubCostLines({ scenarios }: Comparison): readonly string[] {
  const labels = new Map<string, string[]>();
  for (const { label, hubCost } of scenarios)
    if (hubCost !== null) {
      const text = hubCostText(hubCost);
      labels.set(text, [...(labels.get(text) ?? []), label]);
    }
  return [...labels].map(([text, names]) => `${names.join(', ')}: ${text}`);
}

function hubCostText({ lines, total, notConverted, netG, frontWheelG }: HubCost): string {
  const sums = [total, ...notConverted].map(moneyText).join(' and ');
  const front = `of these ${gramsText(frontWheelG)} on the front wheel, net`;
  return `the hub really costs ${sums} and ${gramsText(netG)}, ${front}: ${lines.map(partText).join('; ')}.`;
}

/** A part with what it costs and weighs; what is nothing is left out. */
function partText({ part, price, netG }: HubCostLine): string {
  const paid = price === null || price.minor === 0 ? [] : [moneyText(price)];
  const weighed = netG === 0 ? [] : [gramsText(netG)];
  const figures = [...paid, ...weighed].join(', ');
  return figures === '' ? part : `${part} ${figures}`;
}
