import type { Column, Content, TableCell } from 'pdfmake/interfaces';
import type { Comparison, MassLine, ScenarioResult } from '../../../shared-types/comparison.ts';
import { decimalText, gramsText } from '../format.ts';
import { hubCostLines } from '../ride-lines.ts';
import { bar, bare, barColumnWidthPt, compact, ink, methodColour, riderText, section, size } from './look.ts';

const listsAbreast = 3;
const listGapPt = 14;
const gramsWidthPt = 30;
const toBuyMark = ' (to buy)';
const fewestLettersALine = 15;
/** What a page holds of them, with room to spare. */
const mostLinesKept = 65;

/** An upper bound of a list's height in lines of type, reckoned with the widest letters. */
function mostLines({ label, mass }: ScenarioResult): number {
  const texts = [label, ...mass.lines.map((line) => `${quantityText(line)}${line.label}${toBuyMark}`)];
  return 1 + texts.reduce((lines, text) => lines + Math.ceil(text.length / fewestLettersALine), 0);
}

function rowLines(scenarios: readonly ScenarioResult[]): number {
  return Math.max(0, ...scenarios.map(mostLines));
}

function quantityText({ quantity }: MassLine): string {
  return quantity > 1 ? `${quantity} × ` : '';
}

function lineRow(line: MassLine, bought: boolean): TableCell[] {
  const text = `${quantityText(line)}${line.label}${bought ? toBuyMark : ''}`;
  return [riderText(text), { text: decimalText(line.netG), alignment: 'right' }];
}

function totalText({ carriedG, frontWheelG }: ScenarioResult['mass']): string {
  const total = gramsText(carriedG);
  return frontWheelG === 0 ? total : `${total}, of it ${gramsText(frontWheelG)} on the front wheel`;
}

function itemLines({ cost, mass }: ScenarioResult): Content {
  if (mass.lines.length === 0) return { text: 'nothing', color: ink.quiet };
  const toBuy = new Set(cost.lines.filter(({ owned }) => !owned).map(({ itemId }) => itemId));
  return {
    table: {
      widths: ['*', gramsWidthPt],
      body: mass.lines.map((line) => lineRow(line, toBuy.has(line.itemId))),
    },
    layout: compact,
  };
}

/** Label and total, then a line for each item with its grams, a coloured bar down the side. */
function list(scenario: ScenarioResult): Content {
  const inside: Content = {
    stack: [
      riderText(scenario.label, { bold: true }),
      { text: totalText(scenario.mass), color: ink.quiet, margin: [0, 0, 0, 1] },
      itemLines(scenario),
    ],
    fontSize: size.small,
    margin: [5, 0, 0, 0],
  };
  return {
    table: { widths: [barColumnWidthPt, '*'], body: [[bar(methodColour[scenario.method]), inside]] },
    layout: bare,
  };
}

/** Lists side by side; a short row is filled up so that every list is equally wide. */
function listRow(scenarios: readonly ScenarioResult[]): Content {
  const empty = Array.from({ length: listsAbreast - scenarios.length }, (): Column => ({
    text: '',
    width: '*',
  }));
  const columns = scenarios.map((scenario): Column => ({ stack: [list(scenario)], width: '*' }));
  return {
    columns: [...columns, ...empty],
    columnGap: listGapPt,
    margin: [0, 0, 0, 2],
    unbreakable: rowLines(scenarios) <= mostLinesKept,
  };
}

/** What each scenario packs, grams net of what an item replaces, and what a hub really costs. */
export function packingLists(comparison: Comparison): Content {
  const { scenarios } = comparison;
  const rows = Array.from({ length: Math.ceil(scenarios.length / listsAbreast) }, (_, index) =>
    scenarios.slice(index * listsAbreast, (index + 1) * listsAbreast),
  );
  const lines = rows.reduce((sum, row) => sum + rowLines(row), 0);
  const hubCosts = hubCostLines(comparison).map((line) => riderText(line, { fontSize: size.caution }));
  return section('To pack, g', [...rows.map(listRow), ...hubCosts], lines <= mostLinesKept);
}
