import type { CheckedAirLine } from '../../../shared-types/air-check.ts';
import { bankLines, batteryText, deviceLines, toDoTexts } from '../../../shared-types/air-words.ts';
import type { Comparison, ScenarioResult } from '../../../shared-types/comparison.ts';
import { fullDate } from '../../../shared-types/dates.ts';
import { wordsLocale } from '../../../shared-types/figures.ts';
import { cell, paragraph, type Block, type Cell, type Row, type Section } from './content.ts';

/** What the published rules of air transport ask of each scenario's batteries, and whom to ask. */
export function airSection({ scenarios }: Comparison): Section {
  const [first] = scenarios;
  if (first === undefined) return { heading: 'By air', blocks: [] };
  const devices: Row = {
    method: null,
    cells: [
      cell('Devices, in every scenario'),
      cell(
        deviceLines(scenarios)
          .map((line) => batteryText(line, wordsLocale))
          .join('; ') || 'no battery',
      ),
      cell('', toDoTexts(deviceLines(scenarios))),
    ],
  };
  return {
    heading: 'By air',
    blocks: [
      paragraph(first.air.defer),
      {
        as: 'table',
        title: null,
        size: 'reading',
        columns: [
          { head: 'Scenario', align: 'left', width: 22 },
          { head: 'Carries, by the label', align: 'left', width: 30 },
          { head: 'What must be done', align: 'left', width: 48 },
        ],
        rows: [...alike(scenarios).map(scenarioRow), devices],
      },
      rulesOf(first),
    ],
  };
}

/** Scenarios that carry the same banks have one row. */
function alike(scenarios: readonly ScenarioResult[]): readonly (readonly ScenarioResult[])[] {
  const groups = new Map<string, ScenarioResult[]>();
  for (const scenario of scenarios) {
    const key = JSON.stringify([bankLines(scenario), scenario.air.verdict]);
    groups.set(key, [...(groups.get(key) ?? []), scenario]);
  }
  return [...groups.values()];
}

function scenarioRow(group: readonly ScenarioResult[]): Row {
  const [{ method, air } = { method: null, air: null }] = group;
  const banks = group[0] === undefined ? [] : bankLines(group[0]);
  const [first = '', ...others] = group.map(({ label }) => label);
  const verdict = cell(air?.verdict.text ?? '', toDoTexts(banks));
  return {
    method: others.length === 0 ? method : null,
    cells: [
      cell(first, others),
      banksCell(banks),
      { ...verdict, fails: air?.verdict.class === 'stays-home' },
    ],
  };
}

function banksCell(lines: readonly CheckedAirLine[]): Cell {
  const [text = 'no power bank', ...further] = lines.map((line) => batteryText(line, wordsLocale));
  return cell(text, further);
}

function rulesOf({ air }: ScenarioResult): Block {
  const since = (date: string | null): string =>
    date === null ? '' : `since ${fullDate(date, wordsLocale)}; `;
  return {
    as: 'list',
    title: 'The rules, their dates and sources',
    look: 'reference',
    items: air.rules.map(({ text, since: date, source }) => `${text} (${since(date)}${source})`),
  };
}
