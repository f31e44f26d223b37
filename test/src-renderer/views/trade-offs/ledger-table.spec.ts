import { describe, expect, it } from 'vitest';
import type { ChartTable } from '../../../../src-renderer/parts/charts/chart-table.ts';
import {
  energyOfAll,
  energyOfOne,
  namedDevices,
} from '../../../../src-renderer/views/trade-offs/daily-energy.ts';
import { ledgerTable } from '../../../../src-renderer/views/trade-offs/ledger-table.ts';
import { scenarioFixture } from '../../../support/comparison-fixture.ts';

const scenario = scenarioFixture('panel');

/** The figures of each day, by the words at the head of their column. */
function readTable({ columns, rows }: ChartTable) {
  expect(new Set(rows.map((row) => row.length))).toEqual(new Set([columns.length]));
  return rows.map(
    (row) =>
      (words: string): number =>
        Number(row[columns.indexOf(`${words}, Wh`)]),
  );
}

describe('ledgerTable() of all devices', () => {
  it('shows the whole balance of each day', () => {
    const days = readTable(ledgerTable(energyOfAll(scenario)));
    expect(days).toHaveLength(scenario.days.length);
    for (const at of days) {
      const given = at('Walls, into devices') + at('Walls, through banks') + at('The panel') + at('The hub');
      const gone = at('Served') + at('Lost') + at('Spilled') + at('Change of stored');
      expect(given).toBeCloseTo(gone, 9);
    }
  });
});

describe('ledgerTable() of one device', () => {
  it('shows where its energy is from and what it misses, and nothing of others', () => {
    const [phone] = namedDevices(scenario.devices);
    const table = ledgerTable(energyOfOne(scenario, phone!));
    expect(table.columns).not.toContain('Lost, Wh');
    readTable(table).forEach((at, day) => {
      const of = phone!.ledger.days[day]!;
      expect(at('Walls, directly')).toBe(of.wallDirect);
      expect(at('Banks as filled before the tour')).toBe(of.start);
      expect(at('Served') + at('Not served')).toBeCloseTo(of.demand, 9);
    });
  });
});
