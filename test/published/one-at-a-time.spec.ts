import { describe, expect, it } from 'vitest';
import { swingOf, widestFirst } from '../../src-main/model/judge/swings.ts';
import { expectNear } from '../support/near.ts';

/*
 * One-at-a-time sensitivity: hold all at base, move one to its low and then its high, swing = |f(high) - f(low)|, sorted
 * descending. The method is common; no published numeric example was found, so the figures are worked by hand on an energy
 * balance of the trade: net = power x hours x efficiency - use, Wh a day.
 */
const base = { powerW: 4, hours: 5, efficiency: 0.85, useWh: 12 } as const;
type Inputs = Readonly<Record<keyof typeof base, number>>;
const netWh = ({ powerW, hours, efficiency, useWh }: Inputs): number => powerW * hours * efficiency - useWh;

/** By hand: net at the low and high of each, the swing between, and whether the day turns from a gain to a loss. */
const worked = [
  { name: 'powerW', low: 2.5, high: 5.5, ends: [-1.375, 11.375], swing: 12.75, turns: true },
  { name: 'efficiency', low: 0.75, high: 0.92, ends: [3, 6.4], swing: 3.4, turns: false },
  { name: 'hours', low: 3, high: 7, ends: [-1.8, 11.8], swing: 13.6, turns: true },
  { name: 'useWh', low: 9, high: 18, ends: [8, -1], swing: 9, turns: true },
] as const;

describe('one-at-a-time swings of a daily energy balance, worked by hand', () => {
  const tolerance = 1e-9;
  const swings = worked.map((each) => {
    const [low, high] = [each.low, each.high].map((value) => netWh({ ...base, [each.name]: value })) as [
      number,
      number,
    ];
    return { ...each, found: [low, high], ...swingOf({ base: netWh(base), low, high }) };
  });

  it('starts from 5 Wh a day', () => expectNear(netWh(base), 5, tolerance, 'net at base'));

  it.each(swings)(
    'swings by $swing Wh over $name',
    ({ name, found, ends, width, swing, changesSign, turns }) => {
      ends.forEach((end, at) => expectNear(found[at]!, end, tolerance, `${name}, end ${at}`));
      expectNear(width, swing, tolerance, `swing of ${name}`);
      expect(changesSign).toBe(turns);
    },
  );

  it('puts hours before power, use and efficiency', () => {
    const order = widestFirst(swings, ({ width }) => width).map(({ name }) => name);
    expect(order).toEqual(['hours', 'powerW', 'useWh', 'efficiency']);
  });
});
