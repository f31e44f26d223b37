import { describe, expect, it } from 'vitest';
import type { ScenarioResult } from '../../../../shared-types/comparison.ts';
import {
  energyOfAll,
  energyOfOne,
  namedDevices,
} from '../../../../src-renderer/views/trade-offs/daily-energy.ts';
import { drawLedger, ledgerLegend } from '../../../../src-renderer/views/trade-offs/ledger-chart.ts';
import { demoResult } from '../../support/demo-comparison.ts';

const palette = (property: string): string => `rgb(${property.length}, 0, 0)`;
const labels = (scenario: ScenarioResult) =>
  drawLedger(energyOfAll(scenario), palette).data.datasets.map(({ label }) => label);
const entries = (scenario: ScenarioResult) => ledgerLegend(energyOfAll(scenario)).map(({ label }) => label);

describe('drawLedger()', () => {
  it('marks only days that leave something unserved', () => {
    const banks = demoResult('demo-banks');
    const marks = drawLedger(energyOfAll(banks), palette).data.datasets.find(
      ({ label }) => label === 'Not served',
    );
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
    expect(labels(demoResult('demo-hub'))).toEqual([
      'Asked for',
      'Walls, into devices',
      'Walls, through banks',
      'The hub',
    ]);
    expect(entries(demoResult('demo-panel'))).toEqual([
      'Walls, into devices',
      'Walls, through banks',
      'The panel',
      'What the devices ask for',
    ]);
  });

  it('stacks the sources and nothing else upon each other', () => {
    const stacks = drawLedger(energyOfAll(demoResult('demo-banks')), palette).data.datasets.map(
      (set) => `${set.label ?? ''}: ${'stack' in set ? (set.stack ?? '') : ''}`,
    );
    expect(stacks).toEqual([
      'Asked for: demand',
      'Not served: unserved',
      'Walls, into devices: sources',
      'Walls, through banks: sources',
    ]);
  });

  it('tells what walls give by fill, not by colour alone', () => {
    const [into, through] = ledgerLegend(energyOfAll(demoResult('demo-banks')));
    expect(into?.colour).toBe(through?.colour);
    expect(into?.bar).not.toEqual(through?.bar);
  });

  it('draws one device by its own demand', () => {
    const hub = demoResult('demo-hub');
    const [phone] = namedDevices(hub.devices);
    const energy = energyOfOne(hub, phone!);
    const { datasets } = drawLedger(energy, palette).data;
    expect(datasets[0]?.data).toEqual(phone!.ledger.days.map(({ demand }) => demand));
    expect(ledgerLegend(energy).map(({ label }) => label)).toContain('What it asks for');
  });
});
