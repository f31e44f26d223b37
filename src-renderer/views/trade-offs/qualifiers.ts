import type { Comparison, Cost, LegYield, ScenarioResult } from '../../../shared-types/comparison.ts';
import { amount, moneyText, withUnit } from '../../../shared-types/figures.ts';
import {
  firstShortText,
  limitText,
  ofHundred,
  spreadText,
  usualMargin,
} from '../../../shared-types/history-words.ts';

/** What stands beside the price: what is owned already, and what could not be added up. */
export function costQualifiers(cost: Cost, locale?: string): readonly string[] {
  const others = cost.notConverted.map((money) => `and ${moneyText(money, locale)}`);
  return [...ownedPart(cost, locale), ...others];
}

function ownedPart({ toBuy, whole, lines }: Cost, locale?: string): readonly string[] {
  if (lines.length > 0 && lines.every(({ owned }) => owned)) return ['all owned'];
  return whole.minor > toBuy.minor ? [`of ${amount(whole, locale)}`] : [];
}

/** How much later a mean day of the tour is done by one of its causes, min. */
export function minutesADay(legs: readonly LegYield[], cause: 'massMinutes' | 'dragMinutes'): number {
  const days = legs.reduce((sum, leg) => sum + leg.days, 0);
  return days === 0 ? 0 : legs.reduce((sum, leg) => sum + leg[cause] * leg.days, 0) / days;
}

const minutesWorthSaying = 0.5;

/** What the kit costs in time, as far as it is felt: its grams, and the drag of a hub that charges. */
export function gramsQualifiers(legs: readonly LegYield[], locale?: string): readonly string[] {
  const mass = minutesADay(legs, 'massMinutes');
  const drag = minutesADay(legs, 'dragMinutes');
  const text = (minutes: number): string => withUnit(minutes, 'min', { locale });
  const [byMass, byDrag] = [mass, drag].map((minutes) => minutes >= minutesWorthSaying);
  if (byMass) return [`costs ${text(mass)} a day${byDrag ? `, its drag ${text(drag)} more` : ''}`];
  return byDrag ? [`drag costs ${text(drag)} a day`] : [];
}

/** What the days between walls come to at their two ends. */
export function wallQualifiers(daysWithoutWall: number, tourDays: number): readonly string[] {
  if (daysWithoutWall <= 0) return ['a wall every night is not enough'];
  return daysWithoutWall >= tourDays ? ['needs no wall on the way'] : [];
}

/** What stands beside the margin: how sure it is, what half of the histories carry, and what limits it. */
export function marginQualifiers(
  { margin }: ScenarioResult,
  { confidence }: Comparison,
  locale?: string,
): readonly string[] {
  const often = `in ${ofHundred(confidence, locale)} histories`;
  return [often, usualMargin(margin, locale), limitText(margin)].filter((text) => text !== '');
}

/** What stands under the risk: what runs flat first, and the least that stays stored. */
export function riskQualifiers(
  { firstShort, reserveWh }: ScenarioResult,
  locale?: string,
): readonly string[] {
  const reserve = `lowest reserve ${spreadText(reserveWh, locale)}`;
  return firstShort === null ? [reserve] : [firstShortText(firstShort), reserve];
}
