import type { Comparison, ScenarioResult, ScoredRow } from '../../../shared-types/comparison.ts';
import { fieldMeta } from '../../../shared-types/field.ts';
import { amount, formatNumber, wattHours, wordsLocale } from '../../../shared-types/figures.ts';
import {
  bandText,
  firstShortText,
  flatCount,
  limitText,
  ofHundred,
  riskInterval,
  usualMargin,
} from '../../../shared-types/history-words.ts';
import { method } from '../../../shared-types/scenario.ts';
import { criteria, type Criterion, type Preferences } from '../../../shared-types/settings.ts';
import {
  countedExtras,
  extraText,
  opinionTexts,
  standingTexts,
} from '../../../shared-types/standing-words.ts';
import { stripScale } from '../../../shared-types/strip-scale.ts';
import type { Drawing } from '../figures/drawing.ts';
import { stripDrawing } from '../figures/strip.ts';
import { decimalText, marginText, moneyText } from '../format.ts';
import type { SheetMatter } from '../matter.ts';
import { cell, paragraph, type Cell, type Column, type Row, type Section } from './content.ts';

/** The scenarios side by side, a row each, in order of rank. */
export function scorecardSection({ comparison, inputs }: SheetMatter): Section {
  const { preferences } = inputs.settings;
  const rows = comparison.scenarios.map((scenario) => row(comparison, scenario, preferences));
  return {
    heading: 'Scorecard',
    blocks: [
      { as: 'table', title: null, columns: columnsOf(comparison), rows, subject: 1, size: 'figures' },
      paragraph(axesText(comparison), 'drawings'),
      paragraph(underText, 'quiet'),
    ],
  };
}

function columnsOf({ currency, confidence }: Comparison): readonly Column[] {
  return [
    { head: 'Rank, score', align: 'left', width: 5.5 },
    { head: 'Scenario', align: 'left', width: 33 },
    { head: `${criteria.cost.label}, ${currency}`, align: 'right', width: 10 },
    { head: 'Carried, g', align: 'right', width: 9.5 },
    { head: 'On the front wheel, g', align: 'right', width: 9.5 },
    {
      head: `Energy margin, ${ofHundred(confidence, wordsLocale)} histories`,
      align: 'right',
      width: 17,
    },
    { head: 'Histories with a flat must-have', align: 'right', width: 14 },
    { head: 'Lowest reserve', align: 'right', width: 10 },
  ];
}

function axesText({ confidence }: Comparison): string {
  const sure = ofHundred(confidence, wordsLocale);
  return `The small axes: your own fully satisfied (line) and unacceptable (dots); the bar reaches from the margin that ${sure} histories carry to the one that half of them do.`;
}

const underText =
  'Score: 0 to 1, by your weights. Under the count of histories its 95\u202f% interval (Wilson 1927); under the reserve 10 to 90 of 100 histories.';

function row(comparison: Comparison, scenario: ScenarioResult, preferences: Preferences): Row {
  const score = comparison.scores.find(({ id }) => id === scenario.id);
  const drawn = (name: Criterion, reach: number | null = null): Drawing =>
    stripDrawing({
      scale: stripScale(comparison, name, preferences[name]),
      limits: preferences[name],
      value: scenario.values[name],
      reach,
      method: scenario.method,
    });
  const { cost, mass, margin } = scenario;
  return {
    method: scenario.method,
    cells: [
      cell(score === undefined ? '' : String(score.rank), score === undefined ? [] : [scoreText(score)]),
      cell(scenario.label, standingLines(comparison, scenario, score)),
      { ...cell(amount(cost.toBuy, wordsLocale), priceLines(scenario)), drawn: drawn('cost') },
      { ...cell(decimalText(mass.carriedG)), drawn: drawn('grams') },
      { ...cell(decimalText(mass.frontWheelG)), drawn: drawn('frontWheelGrams') },
      {
        ...cell(marginText(margin), [usualMargin(margin, wordsLocale), limitText(margin)]),
        drawn: drawn('margin', margin.usual),
        fails: margin.value < 0,
      },
      riskCell(scenario, comparison.histories),
      cell(wattHours(scenario.reserveWh.p50, wordsLocale), [bandText(scenario.reserveWh, wordsLocale)]),
    ],
  };
}

function priceLines({ cost }: ScenarioResult): readonly string[] {
  const others = cost.notConverted.map((money) => `and ${moneyText(money)}`);
  return [
    ...(cost.whole.minor > cost.toBuy.minor ? [`of ${amount(cost.whole, wordsLocale)}`] : []),
    ...others,
  ];
}

function riskCell({ risk, firstShort }: ScenarioResult, histories: number): Cell {
  const first = firstShort === null ? '' : firstShortText(firstShort);
  return cell(flatCount(risk, histories, wordsLocale), [riskInterval(risk, wordsLocale), first]);
}

/** Under the label: what it carries, what else the rider counts, and what the rank rests on. */
function standingLines(
  comparison: Comparison,
  scenario: ScenarioResult,
  score: ScoredRow | undefined,
): readonly string[] {
  const extras = countedExtras(comparison).map(
    (name) => `${criteria[name].label}: ${extraText(scenario, name, wordsLocale)}`,
  );
  const standing =
    score === undefined
      ? []
      : [...opinionTexts(score, comparison, wordsLocale), ...standingTexts(score, comparison)];
  return [carriesLine(scenario), ...extras, ...standing];
}

function scoreText({ score }: ScoredRow): string {
  return formatNumber(score, { digits: 2, fixed: true, locale: wordsLocale });
}

/** The method, unless the label says it already, and what is carried. */
function carriesLine({ label, method: code, carries }: ScenarioResult): string {
  const words = fieldMeta(method)?.choices?.[code] ?? code;
  return words === label ? carries : `${words}: ${carries}`;
}
