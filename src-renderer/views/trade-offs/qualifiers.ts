import type {
  Cost,
  EnergyMargin,
  LegYield,
  ScenarioResult,
  Shortfall,
} from '../../../shared-types/comparison.ts';
import { amount, formatNumber, moneyText, percent, withUnit } from '../../../shared-types/figures.ts';
import { criteria, type Criterion } from '../../../shared-types/settings.ts';

/** What stands beside the price: what is owned already, and what could not be added up. */
export function costQualifier(cost: Cost, locale?: string): string {
  const other = cost.notConverted.map((money) => `and ${moneyText(money, locale)}`);
  return [ownedPart(cost, locale), ...other].filter((part) => part !== '').join(' ');
}

function ownedPart({ toBuy, whole, lines }: Cost, locale?: string): string {
  if (lines.length > 0 && lines.every(({ owned }) => owned)) return 'all owned';
  return whole.minor > toBuy.minor ? `of ${amount(whole, locale)}` : '';
}

/** How much later a mean day of the tour is done by one of its causes, min. */
export function minutesADay(legs: readonly LegYield[], cause: 'massMinutes' | 'dragMinutes'): number {
  const days = legs.reduce((sum, leg) => sum + leg.days, 0);
  return days === 0 ? 0 : legs.reduce((sum, leg) => sum + leg[cause] * leg.days, 0) / days;
}

const minutesWorthSaying = 0.5;

/** What the kit costs in time, as far as it is felt: its grams, and the drag of a hub that charges. */
export function gramsQualifier(legs: readonly LegYield[], locale?: string): string {
  const mass = minutesADay(legs, 'massMinutes');
  const drag = minutesADay(legs, 'dragMinutes');
  const text = (minutes: number): string => withUnit(minutes, 'min', { locale });
  const massPart = mass < minutesWorthSaying ? '' : `costs ${text(mass)} a day`;
  if (drag < minutesWorthSaying) return massPart;
  return massPart === '' ? `drag costs ${text(drag)} a day` : `${massPart}, its drag ${text(drag)} more`;
}

/** Which figures lie beyond what the rider accepts. */
export function unacceptableText(names: readonly Criterion[]): string {
  return `Beyond what you accept: ${names.map((name) => criteria[name].label.toLowerCase()).join(', ')}.`;
}

/** Why the margin is no larger, or what fails when it is negative. */
export function marginQualifier(scenario: ScenarioResult, locale?: string): string {
  const { margin } = scenario;
  const parts = [bandPart(margin, locale), limitPart(scenario)];
  return parts.filter((part) => part !== '').join(', ');
}

function bandPart({ band }: EnergyMargin, locale?: string): string {
  if (band === null) return '';
  const style = { signed: true, locale };
  return `${formatNumber(band.p10 * 100, style)} to ${percent(band.p90, style)}`;
}

function limitPart({ margin, firstShort }: ScenarioResult): string {
  if (margin.capped) return 'no limit found';
  const failing = firstShort ?? margin.limitedBy;
  if (margin.value < 0 && failing !== null) return `${failing.device} runs flat on day ${failing.day}`;
  return margin.limitedBy === null ? '' : limitText(margin.limitedBy);
}

function limitText({ device, day }: Shortfall): string {
  return `limited by ${device}, day ${day}`;
}
