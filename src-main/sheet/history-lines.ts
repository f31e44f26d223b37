import type { Comparison, EnergyMargin, ScenarioResult } from '../../shared-types/comparison.ts';
import { wordsLocale } from '../../shared-types/figures.ts';
import { firstShortText, riskText, spreadText, unsteadyGivers } from '../../shared-types/history-words.ts';
import { percentText, shortfallText } from './format.ts';

const leastSpilledShare = 0.005;

/** What the planned use brings in the drawn histories: how often and when something runs flat, and what is left at worst. */
export function plannedTexts(scenario: ScenarioResult, histories: number): readonly string[] {
  const { risk, firstShort, reserveWh, spilledShare, days } = scenario;
  const first = firstShort === null ? '' : `, ${firstShortText(firstShort)}`;
  return [
    `${riskText(risk, histories, wordsLocale)}${first}`,
    `lowest reserve ${spreadText(reserveWh, wordsLocale)}`,
    ...(spilledShare < leastSpilledShare
      ? []
      : [`${percentText(spilledShare)} of what ${unsteadyGivers(days)} is spilled`]),
  ];
}

/** What would run flat first above the margin, and when. */
export function limitText({ limitedBy }: EnergyMargin): string {
  return limitedBy === null ? 'no limit found' : `limited by ${shortfallText(limitedBy)}`;
}

/** A line for each scenario: what its margin is limited by, and what the planned use brings. */
export function historyLines({ scenarios, histories }: Comparison): readonly string[] {
  return scenarios.map((scenario) => {
    const planned = plannedTexts(scenario, histories).join('; ');
    return `${scenario.label}: ${planned}. Margin: ${limitText(scenario.margin)}.`;
  });
}
