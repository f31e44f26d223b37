import type { Comparison, MassLine, ScenarioResult } from '../../../shared-types/comparison.ts';
import { fieldMeta } from '../../../shared-types/field.ts';
import { mount } from '../../../shared-types/item-common.ts';
import { decimalText } from '../format.ts';
import { cell, paragraph, type Row, type Section, type Table } from './content.ts';

/** What each scenario packs, where it rides, and its grams net of what it replaces. */
export function packingSection({ scenarios }: Comparison): Section {
  return {
    heading: 'To pack',
    blocks: [
      { as: 'abreast', parts: scenarios.map(packingTable) },
      paragraph('Grams of all pieces, less what an item replaces.', 'quiet'),
    ],
  };
}

function packingTable(scenario: ScenarioResult): Table {
  const { label, method, mass } = scenario;
  const toBuy = new Set(scenario.cost.lines.filter(({ owned }) => !owned).map(({ itemId }) => itemId));
  const sum = (words: string, massG: number): Row => ({
    method,
    heads: true,
    cells: [cell(words), cell(''), cell(decimalText(massG))],
  });
  return {
    as: 'table',
    title: label,
    size: 'reading',
    columns: [
      { head: 'Item', align: 'left', width: 52 },
      { head: 'Where', align: 'left', width: 30 },
      { head: 'g', align: 'right', width: 18 },
    ],
    rows: [
      ...mass.lines.map((line) => itemRow(line, method, toBuy.has(line.itemId))),
      sum('All of it', mass.carriedG),
      ...(mass.frontWheelG === 0 ? [] : [sum('Of it on the front wheel', mass.frontWheelG)]),
    ],
  };
}

function itemRow(line: MassLine, method: ScenarioResult['method'], bought: boolean): Row {
  const pieces = line.quantity > 1 ? `${line.quantity}\u00a0× ` : '';
  return {
    method,
    cells: [
      cell(`${pieces}${line.label}${bought ? ' (to buy)' : ''}`),
      cell(fieldMeta(mount)?.choices?.[line.mount] ?? line.mount),
      cell(decimalText(line.netG)),
    ],
  };
}
