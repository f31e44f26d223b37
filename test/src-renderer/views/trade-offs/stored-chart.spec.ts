import { describe, expect, it } from 'vitest';
import type { Comparison } from '../../../../shared-types/comparison.ts';
import {
  drawStored,
  storedLegend,
  storedSubtitle,
  storedTable,
} from '../../../../src-renderer/views/trade-offs/stored-chart.ts';
import { demoComparison, demoResult } from '../../support/demo-comparison.ts';

const palette = (property: string): string => `rgb(${property.length}, 0, 0)`;
const demo = demoComparison();

/** A comparison of one scenario whose stored energy is given step by step, low and high 5 Wh beside it. */
function stepwise(middleWh: number[], pointsPerDay = 24): Comparison {
  const beside = (shift: number): number[] => middleWh.map((wh) => wh + shift);
  const stored = { capacityWh: 110, pointsPerDay, lowWh: beside(-5), middleWh, highWh: beside(5) };
  return {
    ...demo,
    tour: { ...demo.tour, days: middleWh.length / pointsPerDay },
    scenarios: [demoResult('demo-panel', { stored })],
  };
}

const twoDays = Array.from({ length: 48 }, (_, hour) => 100 - hour);

describe('storedTable()', () => {
  it('leaves a day empty that no step was given for', () => {
    const short = { ...stepwise(twoDays), tour: { ...demo.tour, days: 3 } };
    expect(storedTable(short).rows[2]).toEqual(['3', '2027-05-05', Number.NaN, Number.NaN, Number.NaN]);
  });

  it('gives the lowest of each day, low, middle and high, with its date', () => {
    expect(storedTable(stepwise(twoDays))).toEqual({
      columns: [
        ...['Day', 'Date'],
        'Panel + buffer bank, lowest stored, low, Wh',
        'Panel + buffer bank, lowest stored, middle, Wh',
        'Panel + buffer bank, lowest stored, high, Wh',
      ],
      rows: [
        ['1', '2027-05-03', 72, 77, 82],
        ['2', '2027-05-04', 48, 53, 58],
      ],
    });
  });

  it('finds the days of a course of finer steps', () => {
    const quarters = Array.from({ length: 2 * 96 }, (_, step) => 100 - step / 4);
    expect(storedTable(stepwise(quarters, 96)).rows.map((row) => row[3])).toEqual([76.25, 52.25]);
  });
});

describe('drawStored()', () => {
  it('draws the band of every scenario under its line, unnamed', () => {
    const { data } = drawStored(demo, palette);
    const names = demo.scenarios.flatMap(({ label }) => [undefined, undefined, label]);
    expect(data.datasets.map(({ label }) => label)).toEqual(names);
    expect(data.datasets[1]).toMatchObject({ fill: { target: '-1' } });
  });

  it('draws every step of a short tour, at its end', () => {
    const { data } = drawStored(stepwise(twoDays), palette);
    expect(data.datasets[2]?.data).toHaveLength(48);
    expect(data.datasets[2]?.data[0]).toEqual({ x: 1, y: 100 });
    expect(data.datasets[2]?.data[47]).toEqual({ x: 48, y: 53 });
    const finer = drawStored(stepwise([90, 80, 70, 60], 4), palette);
    expect(finer.data.datasets[2]?.data.map((point) => (point as { x: number }).x)).toEqual([6, 12, 18, 24]);
  });

  it('draws the lowest of each day on a long tour, and says so', () => {
    const long = stepwise(Array.from({ length: 100 * 24 }, (_, hour) => 100 - (hour % 24)));
    const { data } = drawStored(long, palette);
    expect(data.datasets[2]?.data).toHaveLength(100);
    expect(data.datasets[0]?.data[0]).toEqual({ x: 12, y: 72 });
    expect(data.datasets[2]?.data[0]).toEqual({ x: 12, y: 77 });
    expect(storedSubtitle(long)).toContain('lowest of each day');
    expect(storedSubtitle(stepwise(twoDays))).not.toContain('lowest of each day');
  });

  it('names dates along the axis, not hours', () => {
    const scale = drawStored(demo, palette).options?.scales?.['x'];
    const callback = scale?.ticks?.callback as unknown as (hour: number) => string;
    expect(callback(24)).toMatch(/4/);
    expect(callback(24)).not.toBe(callback(0));
  });
});

describe('words around the chart', () => {
  it('says what line and band are', () => {
    expect(storedSubtitle(demo)).toContain('Line: middle history. Band: 10 to 90 of 100 histories.');
  });

  it('names every scenario in the legend with its own line', () => {
    const entries = storedLegend(demo);
    expect(entries.map(({ label }) => label)).toEqual(demo.scenarios.map(({ label }) => label));
    expect(new Set(entries.map(({ colour, dash }) => colour + dash.join())).size).toBe(entries.length);
  });
});
