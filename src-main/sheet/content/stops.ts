import type { Comparison } from '../../../shared-types/comparison.ts';
import { wordsLocale } from '../../../shared-types/figures.ts';
import { toldLights, toldSteps } from '../../../shared-types/stop-words.ts';
import { cell, paragraph, type Block, type Column, type List, type Section } from './content.ts';

/** What to do at walls and between them: what holds for every scenario once, then what is its own; and what lights mean. */
export function stopSection(comparison: Comparison): Section {
  return {
    heading: 'At walls and between them',
    blocks: [...stepLists(comparison), ...lightTable(comparison)],
  };
}

function stepLists({ scenarios }: Comparison): readonly Block[] {
  const { common, own } = toldSteps(scenarios);
  const title = scenarios.length > 1 ? 'In every scenario' : null;
  return [
    ...(common.length === 0 ? [] : [numbered(title, common)]),
    ...(own.length === 0
      ? []
      : [
          {
            as: 'abreast' as const,
            parts: own.map(({ scenario, steps }) => numbered(scenario.label, steps)),
          },
        ]),
  ];
}

function numbered(title: string | null, items: readonly string[]): List {
  return { as: 'list', title, items, look: 'numbered' };
}

function lightTable({ scenarios }: Comparison): readonly Block[] {
  const { sunny, rows, basis } = toldLights(scenarios, wordsLocale);
  if (rows.length === 0) return [];
  const days = (head: string): Column => ({ head, align: 'right', width: 15 });
  return [
    {
      as: 'table',
      title: 'What the lights of one bank mean',
      size: 'reading',
      columns: [
        { head: 'Bank', align: 'left', width: 26 },
        { head: 'Full, Wh', align: 'right', width: 10 },
        { head: 'Lights', align: 'right', width: 10 },
        { head: 'Wh at its plug', align: 'right', width: 14 },
        days('Days from it alone'),
        ...sunny.map(({ label }) => days(`${label}: days`)),
      ],
      rows: rows.map(({ bank, fullWh, lights, wh, alone, withSources }) => ({
        method: null,
        cells: [bank, fullWh, lights, wh, alone, ...withSources].map((text) => cell(text)),
      })),
    },
    paragraph(basis, 'quiet'),
  ];
}
