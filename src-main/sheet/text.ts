import { allLegNotes } from '../../shared-types/all-leg-notes.ts';
import type { Comparison, ScenarioResult } from '../../shared-types/comparison.ts';
import { wordsLocale } from '../../shared-types/figures.ts';
import { ofHundred } from '../../shared-types/history-words.ts';
import { dailyMeanWh, flowHeads, flows } from './daily-mean.ts';
import { countText, dateText, decimalText, marginText, moneyText, usualText, whText } from './format.ts';
import { historyLines } from './history-lines.ts';
import { oneLine, wrap } from './plain-text.ts';
import { hubCostLines, laterLines } from './ride-lines.ts';
import { reserveReminder, type SheetStamp } from './sheet-file.ts';
import { textTable, type TextColumn } from './text-table.ts';

/** Fits a mail and a terminal of 100 columns. */
const textWidth = 92;
const scenarioWidth = 23;

const scenarioColumns: readonly TextColumn[] = [
  { head: 'Rank', align: 'right' },
  { head: 'Scenario', align: 'left', widest: scenarioWidth },
];
const scorecardColumns: readonly TextColumn[] = [
  ...scenarioColumns,
  { head: 'To buy', align: 'right' },
  { head: 'Grams', align: 'right' },
  { head: 'Front g', align: 'right' },
  { head: 'Margin', align: 'right' },
  { head: 'Usual', align: 'right' },
];
const ledgerColumns: readonly TextColumn[] = [
  ...scenarioColumns,
  ...flows.map((flow): TextColumn => ({ head: flowHeads[flow], align: 'right' })),
];

function rankAndLabel(comparison: Comparison, scenario: ScenarioResult): readonly string[] {
  const score = comparison.scores.find(({ id }) => id === scenario.id);
  return [score === undefined ? '' : String(score.rank), scenario.label];
}

function scorecardLines(comparison: Comparison): readonly string[] {
  const rows = comparison.scenarios.map((scenario) => [
    ...rankAndLabel(comparison, scenario),
    moneyText(scenario.cost.toBuy),
    decimalText(scenario.mass.carriedG),
    decimalText(scenario.mass.frontWheelG),
    marginText(scenario.margin),
    usualText(scenario.margin),
  ]);
  const margins = `Margin: carried in ${ofHundred(comparison.confidence, wordsLocale)} histories; usual: in half of them.`;
  return [...textTable(scorecardColumns, rows), ...paragraph(margins)];
}

function historyBlock(comparison: Comparison): readonly string[] {
  return ['As planned', ...bullets(historyLines(comparison))];
}

function notConvertedLines(comparison: Comparison): readonly string[] {
  return comparison.scenarios
    .filter(({ cost }) => cost.notConverted.length > 0)
    .flatMap(({ label, cost }) =>
      paragraph(
        `${label}: not converted and not in its price: ${cost.notConverted.map(moneyText).join(', ')}.`,
      ),
    );
}

function ledgerLines(comparison: Comparison): readonly string[] {
  const rows = comparison.scenarios.map((scenario) => [
    ...rankAndLabel(comparison, scenario),
    ...flows.map((flow) => whText(dailyMeanWh(scenario.days, flow))),
  ]);
  return ['Mean Wh a day', ...textTable(ledgerColumns, rows)];
}

function paragraph(text: string): readonly string[] {
  return wrap(oneLine(text), textWidth);
}

function bullets(texts: readonly string[]): readonly string[] {
  return texts.flatMap((text) => wrap(`- ${oneLine(text)}`, textWidth, '  '));
}

/** The legs and their weather are the same for every scenario. */
function legBlocks({ scenarios }: Comparison): readonly (readonly string[])[] {
  const notes = allLegNotes(scenarios[0]?.legs ?? []);
  return notes.length === 0 ? [] : [['On the legs', ...bullets(notes)]];
}

function rideBlock(comparison: Comparison): readonly string[] {
  return ['On the road', ...bullets([...laterLines(comparison), ...hubCostLines(comparison)])];
}

function tourLines({ tour, histories }: Comparison): readonly string[] {
  const demand = `${whText(tour.demandWhPerDay)} Wh a day`;
  const drawn = countText(histories, 'history', 'histories');
  return paragraph(`${tour.label}: ${tour.summary}. Use ${demand}, ${drawn}.`);
}

/** No-break spaces have done their work once the lines are broken; many terminals and mail readers show them badly. */
function ordinarySpaces(text: string): string {
  return text.replace(/[\u00a0\u202f]/gu, ' ');
}

/** The comparison for a terminal or a mail, at most 100 columns wide, lines ended by LF. */
export function comparisonText(comparison: Comparison, { madeOn, version }: SheetStamp): string {
  const { advice, cautions } = comparison;
  const blocks = [
    tourLines(comparison),
    [...paragraph(advice.answer), ...paragraph(advice.why), ...bullets(advice.notes)],
    [...scorecardLines(comparison), ...notConvertedLines(comparison)],
    historyBlock(comparison),
    ledgerLines(comparison),
    rideBlock(comparison),
    ...legBlocks(comparison),
    ['Cautions', ...bullets(cautions)],
    [reserveReminder, `Chargewright ${version}, made on ${dateText(madeOn)}`],
  ];
  return ordinarySpaces(`${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`);
}
