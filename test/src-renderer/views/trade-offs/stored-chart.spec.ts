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

/** A comparison of one scenario whose stored energy is given hour by hour. */
function hourly(
  middleWh: number[],
  lowWh: number[] | null = null,
  highWh: number[] | null = null,
): Comparison {
  const stored = { capacityWh: 100, middleWh, lowWh, highWh };
  return {
    ...demo,
    tour: { ...demo.tour, days: middleWh.length / 24 },
    scenarios: [demoResult('demo-panel', { stored })],
  };
}

const twoDays = Array.from({ length: 48 }, (_, hour) => 100 - hour);

describe('storedTable()', () => {
  it('leaves a day empty that no hour was given for', () => {
    const short = { ...hourly(twoDays), tour: { ...demo.tour, days: 3 } };
    expect(storedTable(short).rows[2]).toEqual(['3', '2027-05-05', Number.NaN]);
  });

  it('gives the lowest of each day with its date', () => {
    expect(storedTable(hourly(twoDays))).toEqual({
      columns: ['Day', 'Date', 'Panel + buffer bank, lowest stored, Wh'],
      rows: [
        ['1', '2027-05-03', 77],
        ['2', '2027-05-04', 53],
      ],
    });
  });
});

describe('drawStored()', () => {
  it('draws one line a scenario while there is no band', () => {
    const { data } = drawStored(demo, palette);
    expect(data.datasets.map(({ label }) => label)).toEqual(demo.scenarios.map(({ label }) => label));
  });

  it('draws the band under the line, unnamed', () => {
    const { data } = drawStored(hourly(twoDays, twoDays, twoDays), palette);
    expect(data.datasets.map(({ label }) => label)).toEqual([undefined, undefined, 'Panel + buffer bank']);
    expect(data.datasets[1]).toMatchObject({ fill: { target: '-1' } });
  });

  it('draws every hour of a short tour', () => {
    const { data } = drawStored(hourly(twoDays), palette);
    expect(data.datasets[0]?.data).toHaveLength(48);
    expect(data.datasets[0]?.data[47]).toEqual({ x: 47, y: 53 });
  });

  it('draws the lowest of each day on a long tour, and says so', () => {
    const long = hourly(Array.from({ length: 100 * 24 }, (_, hour) => 100 - (hour % 24)));
    const { data } = drawStored(long, palette);
    expect(data.datasets[0]?.data).toHaveLength(100);
    expect(data.datasets[0]?.data[0]).toEqual({ x: 12, y: 77 });
    expect(storedSubtitle(long)).toContain('lowest of each day');
    expect(storedSubtitle(hourly(twoDays))).not.toContain('lowest of each day');
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
    expect(storedSubtitle(demo)).toMatch(/Wh\. Line: mean history\.$/);
    const banded = { ...hourly(twoDays, twoDays, twoDays), histories: 200 };
    expect(storedSubtitle(banded)).toContain('Line: middle history. Band: 10 to 90 of 100.');
  });

  it('names every scenario in the legend with its own line', () => {
    const entries = storedLegend(demo);
    expect(entries.map(({ label }) => label)).toEqual(demo.scenarios.map(({ label }) => label));
    expect(new Set(entries.map(({ colour, dash }) => colour + dash.join())).size).toBe(entries.length);
  });
});
