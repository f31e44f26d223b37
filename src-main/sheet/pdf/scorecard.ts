import type { Content, ContentStack, ContentText, ContentTable, TableCell } from 'pdfmake/interfaces';
import type { Comparison, ScenarioResult, ScoredRow } from '../../../shared-types/comparison.ts';
import { fieldMeta } from '../../../shared-types/field.ts';
import { wordsLocale } from '../../../shared-types/figures.ts';
import { ofHundred } from '../../../shared-types/history-words.ts';
import { method } from '../../../shared-types/scenario.ts';
import { criteria } from '../../../shared-types/settings.ts';
import { countedExtras, extraText, standingTexts } from '../../../shared-types/standing-words.ts';
import { decimalText, marginText, moneyText, usualText } from '../format.ts';
import { limitText, plannedTexts } from '../history-lines.ts';
import {
  bar,
  barColumnWidthPt,
  columnHead,
  hairlines,
  ink,
  methodColour,
  riderText,
  size,
  small,
} from './look.ts';

const widths = [barColumnWidthPt, 8, '*', 62, 40, 46, 60, 128];
const rowPaddingPt = 2.5;

/** The small line under a label: the method, unless the label says it already, and what is carried. */
function carriesLine({ label, method: code, carries }: ScenarioResult): string {
  const words = fieldMeta(method)?.choices?.[code] ?? code;
  return words === label ? carries : `${words}: ${carries}`;
}

function figure(text: string, ...qualifiers: readonly string[]): ContentStack {
  const large: Content = { text, fontSize: size.figure, bold: true };
  return { stack: [large, ...qualifiers.map(small)], alignment: 'right' };
}

function priceCell({ cost }: ScenarioResult): TableCell {
  const others = cost.notConverted.map((money) => `+ ${moneyText(money)}`);
  return figure(moneyText(cost.toBuy), `of ${moneyText(cost.whole)}`, ...others);
}

/** Red only for a figure that fails. */
function marginCell({ margin }: ScenarioResult): TableCell {
  const cell = figure(marginText(margin), `${usualText(margin)} in half`);
  return margin.value < 0 ? { ...cell, color: ink.failing } : cell;
}

/** What limits the margin, and under it what happens at the planned use. */
function historiesCell(scenario: ScenarioResult, histories: number): TableCell {
  const [risk, ...rest] = plannedTexts(scenario, histories);
  const planned = [`as planned ${risk}`, ...rest].map(small);
  return { stack: [riderText(limitText(scenario.margin)), ...planned] };
}

/** Under the label: what the rank rests on, and what else the rider counts. */
function standingLines(
  comparison: Comparison,
  scenario: ScenarioResult,
  score: ScoredRow | undefined,
): readonly ContentText[] {
  const extras = countedExtras(comparison).map(
    (name) => `${criteria[name].label}: ${extraText(scenario, name, wordsLocale)}`,
  );
  const standing = score === undefined ? [] : standingTexts(score, comparison);
  return [...extras, ...standing].map(small);
}

function row(comparison: Comparison, scenario: ScenarioResult): TableCell[] {
  const score = comparison.scores.find(({ id }) => id === scenario.id);
  return [
    bar(methodColour[scenario.method]),
    { text: score === undefined ? '' : String(score.rank), fontSize: size.figure, bold: true },
    {
      stack: [
        riderText(scenario.label, { bold: true }),
        small(carriesLine(scenario)),
        ...standingLines(comparison, scenario, score),
      ],
    },
    priceCell(scenario),
    figure(decimalText(scenario.mass.carriedG)),
    figure(decimalText(scenario.mass.frontWheelG)),
    marginCell(scenario),
    historiesCell(scenario, comparison.histories),
  ];
}

/** The scenarios side by side, a row each, in order of rank. */
export function scorecard(comparison: Comparison): ContentTable {
  const head: TableCell[] = [
    { text: '' },
    { text: '' },
    columnHead('Scenario', 'left'),
    columnHead('To buy'),
    columnHead('Carried, g'),
    columnHead('On the front wheel, g'),
    columnHead(`Energy margin, ${ofHundred(comparison.confidence, wordsLocale)} histories`),
    columnHead('What the histories say', 'left'),
  ];
  const body = [head, ...comparison.scenarios.map((scenario) => row(comparison, scenario))];
  return {
    margin: [0, 8, 0, 0],
    table: { headerRows: 1, dontBreakRows: true, widths, body },
    layout: hairlines(rowPaddingPt),
  };
}
