import { describe, expect, it } from 'vitest';
import type { ScenarioResult } from '../../../../shared-types/comparison.ts';
import {
  drawLedger,
  ledgerLegend,
  ledgerTable,
} from '../../../../src-renderer/views/trade-offs/ledger-chart.ts';
import { demoResult } from '../../support/demo-comparison.ts';

const palette = (property: string): string => property;
const labels = (scenario: ScenarioResult) =>
  drawLedger(scenario, palette).data.datasets.map(({ label }) => label);
const entries = (scenario: ScenarioResult) => ledgerLegend(scenario).map(({ label }) => label);

describe('drawLedger()', () => {
  it('marks only days that leave something unserved', () => {
    const banks = demoResult('demo-banks');
    const marks = drawLedger(banks, palette).data.datasets.find(({ label }) => label === 'Not served');
    const marked = (marks?.data ?? []).flatMap((value, i) => (value === null ? [] : [i + 1]));
    expect(marked).toEqual(banks.days.filter(({ unserved }) => unserved > 0).map(({ day }) => day));
    expect(marked.length).toBeGreaterThan(0);
  });

  it('draws no mark and no legend for what is not missing', () => {
    const panel = demoResult('demo-panel');
    expect(labels(panel)).not.toContain('Not served');
    expect(entries(panel)).not.toContain('Part of it not served');
  });

  it('draws only sources that give something', () => {
    expect(labels(demoResult('demo-hub'))).toEqual(['Asked for', 'Walls', 'The hub']);
    expect(entries(demoResult('demo-panel'))).toEqual(['Walls', 'The panel', 'What the devices ask for']);
  });

  it('stacks the sources and nothing else upon each other', () => {
    const stacks = drawLedger(demoResult('demo-banks'), palette).data.datasets.map(
      (set) => `${set.label ?? ''}: ${'stack' in set ? (set.stack ?? '') : ''}`,
    );
    expect(stacks).toEqual(['Asked for: demand', 'Not served: unserved', 'Walls: sources']);
  });
});

describe('ledgerTable()', () => {
  it('shows the whole balance of each day', () => {
    const scenario = demoResult('demo-panel');
    const { columns, rows } = ledgerTable(scenario);
    expect(rows).toHaveLength(scenario.days.length);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([columns.length]));
    for (const row of rows) {
      const at = (name: string): number => Number(row[columns.indexOf(`${name}, Wh`)]);
      const given = at('Walls') + at('Panel') + at('Hub');
      const gone = at('Served') + at('Lost') + at('Spilled') + at('Change of stored');
      expect(given).toBeCloseTo(gone, 9);
    }
  });
});
