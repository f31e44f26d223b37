import { describe, expect, it } from 'vitest';
import type { Comparison, LegYield } from '../../../shared-types/comparison.ts';
import { dailyMinutes, hubCostLines, roadLines } from '../../../src-main/sheet/ride-lines.ts';

const leg = (days: number, minutes: number) =>
  ({ days, massMinutes: minutes, dragMinutes: 2 * minutes, offMinutes: minutes / 2 }) as LegYield;

const hubCost = {
  lines: [
    { part: 'Hub', price: { minor: 11_000, currency: 'EUR' }, netG: 460 },
    { part: 'Hub that comes off', price: null, netG: -150 },
  ],
  total: { minor: 11_000, currency: 'EUR' },
  notConverted: [{ minor: 900, currency: 'JPY' }],
  netG: 310,
  frontWheelG: 300,
};

const comparison = (scenarios: readonly object[]) => ({ scenarios }) as unknown as Comparison;

/** Nothing of its sources is spilled. */
const none = { hubCost: null, spilledShare: 0, days: [] };

describe('dailyMinutes()', () => {
  it('is nothing without legs', () => expect(dailyMinutes([], 'massMinutes')).toBe(0));
  it('weights the legs by their days', () =>
    expect(dailyMinutes([leg(1, 4), leg(3, 8)], 'massMinutes')).toBe(7));
});

describe('roadLines()', () => {
  it('speaks of grams only without a hub', () => {
    expect(roadLines(comparison([{ ...none, label: 'Panel', legs: [leg(2, 1.5)] }]))).toEqual([
      'Panel: 1.5 min a day later by its grams.',
    ]);
  });

  it('tells the hub charging and switched off apart', () => {
    expect(roadLines(comparison([{ ...none, label: 'Hub', legs: [leg(2, 3)], hubCost }]))).toEqual([
      'Hub: 3.0 min a day later by its grams, 6.0 by the hub’s drag, charging (1.5 switched off).',
    ]);
  });
});

describe('roadLines(), of what is spilled,', () => {
  const spilling = (spilledShare: number, days: readonly object[]) =>
    roadLines(comparison([{ ...none, label: 'Kit', legs: [], spilledShare, days }]));
  const [sunny, windy] = [
    { panel: 12, hub: 0 },
    { panel: 0, hub: 9 },
  ];

  it('says nothing below half a per cent', () => {
    expect(spilling(0.0049, [sunny])[0]).not.toContain('spilled');
  });

  it('names the share and who gives it', () => {
    expect(spilling(0.125, [sunny])[0]).toMatch(/; 13\u202f% of what the panel gives is spilled\.$/u);
    expect(spilling(0.03, [windy])[0]).toMatch(/; 3\u202f% of what the hub gives is spilled\.$/u);
    expect(spilling(0.03, [sunny, windy])[0]).toMatch(/of what panel and hub give is spilled\.$/u);
  });
});

describe('hubCostLines()', () => {
  it('tells the same hub of several scenarios once', () => {
    const lines = hubCostLines(
      comparison([
        { label: 'Hub', hubCost },
        { label: 'Banks', hubCost: null },
        { label: 'Mix', hubCost },
        { label: 'Heavy', hubCost: { ...hubCost, netG: 500 } },
      ]),
    );
    expect(lines.map((line) => line.slice(0, line.indexOf(':')))).toEqual(['Hub, Mix', 'Heavy']);
  });

  it('has nothing to say without a hub', () => {
    expect(hubCostLines(comparison([{ label: 'Panel', hubCost: null }]))).toEqual([]);
  });

  it('names the sum, other currencies, and every part', () => {
    const [line] = hubCostLines(comparison([{ label: 'Hub', hubCost }]));
    const plain = line!.replaceAll('\u00a0', ' ');
    expect(plain).toMatch(
      /^Hub: the hub really costs .*110.* and .*900.* and 310 g, of these 300 g on the front wheel, net: /,
    );
    expect(plain).toMatch(/Hub that comes off .150 g\.$/);
  });
});
