import type { Content, ContentStack, ContentTable, TableCell } from 'pdfmake/interfaces';
import type { Comparison, EnergyMargin, ScenarioResult } from '../../../shared-types/comparison.ts';
import { fieldMeta } from '../../../shared-types/field.ts';
import { method } from '../../../shared-types/scenario.ts';
import {
  decimalText,
  marginText,
  moneyText,
  percentText,
  shortfallText,
  signedPercentText,
} from '../format.ts';
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

const widths = [barColumnWidthPt, 8, '*', 66, 42, 48, 58, 98];
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

function bandTexts({ band }: EnergyMargin): readonly string[] {
  return band === null ? [] : [`${signedPercentText(band.p10)} to ${signedPercentText(band.p90)}`];
}

/** Red only for a figure that fails. */
function marginCell({ margin }: ScenarioResult): TableCell {
  const cell = figure(marginText(margin), ...bandTexts(margin));
  return margin.value < 0 ? { ...cell, color: ink.failing } : cell;
}

/** What happens at the planned use, neither more nor less. */
function asPlanned({ firstShort, flatShare }: ScenarioResult, histories: number): string {
  if (firstShort === null) return 'as planned: none runs flat';
  const often = histories > 1 ? `, in ${percentText(flatShare)} of histories` : '';
  return `as planned: ${firstShort.device} flat, day ${firstShort.day}${often}`;
}

function limitCell(scenario: ScenarioResult, histories: number): TableCell {
  const limit = scenario.margin.capped ? 'no limit found' : shortfallText(scenario.margin.limitedBy);
  return { stack: [riderText(limit), small(asPlanned(scenario, histories))] };
}

function row(comparison: Comparison, scenario: ScenarioResult): TableCell[] {
  const score = comparison.scores.find(({ id }) => id === scenario.id);
  return [
    bar(methodColour[scenario.method]),
    { text: score === undefined ? '' : String(score.rank), fontSize: size.figure, bold: true },
    {
      stack: [riderText(scenario.label, { bold: true }), small(carriesLine(scenario))],
    },
    priceCell(scenario),
    figure(decimalText(scenario.mass.carriedG)),
    figure(decimalText(scenario.mass.frontWheelG)),
    marginCell(scenario),
    limitCell(scenario, comparison.histories),
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
    columnHead(comparison.histories > 1 ? 'Energy margin, 10–90 of 100' : 'Energy margin'),
    columnHead('Limited by', 'left'),
  ];
  const body = [head, ...comparison.scenarios.map((scenario) => row(comparison, scenario))];
  return {
    margin: [0, 8, 0, 0],
    table: { headerRows: 1, dontBreakRows: true, widths, body },
    layout: hairlines(rowPaddingPt),
  };
}
