import { describe, expect, it } from 'vitest';
import { generatorWheel, type ConverterModel, type HubModel } from '../../src-main/model/ride/hub.ts';
import { expectNear } from '../support/near.ts';

/*
 * Drag of gearless hubs with nothing connected, W, at the two ends of a lathe test of five hubs: Fahrradzukunft 14 (2012), as the
 * lab test of hub drag at cyclingabout.com reports it. Between them the values follow k1 v + k2 v2 through both ends, reckoned
 * outside the project and printed to 0.001 W.
 */
const drags = {
  best: { 10: 0.25, 15: 0.438, 20: 0.667, 25: 0.938, 30: 1.25 },
  'middle A': { 10: 0.5, 15: 0.781, 20: 1.083, 25: 1.406, 30: 1.75 },
  'middle B': { 10: 0.5, 15: 0.875, 20: 1.333, 25: 1.875, 30: 2.5 },
  worst: { 10: 1, 15: 1.875, 20: 3, 25: 4.375, 30: 6 },
} as const;
type Tested = keyof typeof drags;
const all = Object.keys(drags) as Tested[];

function hub(tested: Tested): HubModel {
  return {
    power: { as: 'rating', ratedW: 3 },
    wheelCircumferenceM: 2.155,
    ratedCircumferenceM: 2.155,
    idleDragW10: drags[tested][10],
    idleDragW30: drags[tested][30],
  };
}

/** The lamp of the approval test: 12 ohm, nothing lost on the way, lit at any speed. */
const lamp: ConverterModel = {
  efficiency: 1,
  startSpeedKmh: 0,
  outputW: 100,
  load: 'rated',
  seriesCapacitorUF: 0,
};
const lit = (tested: Tested) => generatorWheel(hub(tested), lamp);
const efficiencyAt = (tested: Tested, kmh: number): number => lit(tested).plugW(kmh) / lit(tested).onW(kmh);
const bestEfficiency = (tested: Tested): number =>
  Math.max(...Array.from({ length: 36 }, (_, step) => efficiencyAt(tested, 5 + step)));

describe('drag of a hub switched off', () => {
  it.each(all)('is that of the lathe test for the %s hub', (tested) => {
    const { offW } = generatorWheel(hub(tested), null);
    for (const [kmh, watts] of Object.entries(drags[tested]))
      expectNear(offW(Number(kmh)), watts, 6e-4, `at ${kmh} km/h, W`);
  });
  it.each(['middle A', 'middle B'] as const)('is the 1 to 2 W riders read at 20 km/h, %s hub', (tested) => {
    // An independent rider's blog on hub generators: "off 1-2 W" at 20 km/h.
    expectNear(generatorWheel(hub(tested), null).offW(20), 1.5, 0.5, 'at 20 km/h, W');
  });
});

describe('drag of a hub with its lamp lit', () => {
  // Constructed from the reference generator and the lathe test outside the project, no published values; 1e-3.
  it.each([
    { tested: 'best', kmh: 15, watts: 4.292, efficiency: 0.718 },
    { tested: 'best', kmh: 20, watts: 5.073, efficiency: 0.695 },
    { tested: 'best', kmh: 30, watts: 6.158, efficiency: 0.638 },
    { tested: 'middle A', kmh: 15, watts: 4.636, efficiency: 0.665 },
    { tested: 'middle A', kmh: 20, watts: 5.49, efficiency: 0.642 },
    { tested: 'middle A', kmh: 30, watts: 6.658, efficiency: 0.59 },
  ] as const)('is $watts W for the $tested hub at $kmh km/h', ({ tested, kmh, watts, efficiency }) => {
    expectNear(lit(tested).onW(kmh), watts, 1e-3 * watts, 'drag, W');
    expectNear(efficiencyAt(tested, kmh), efficiency, 1e-3, 'efficiency');
  });

  it.each(['middle A', 'middle B', 'worst'] as const)('leaves 55 to 70 %% at best, %s hub', (tested) => {
    // Best efficiencies read of gearless hubs: 55 %, 65 %, up to 70 %.
    expectNear(bestEfficiency(tested), 0.625, 0.075, 'best efficiency');
  });
  it('leaves a little over 70 % at best with the best hub', () => {
    // All hubs here share the winding of the reference generator, which loses a fifth: 5 of 100 for that.
    expectNear(bestEfficiency('best'), 0.7, 0.05, 'best efficiency');
  });
  it('leaves 65 % at 15 km/h and less above', () => {
    // An encyclopedia on hub dynamos: "65 % at 15 km/h, lower above"; 2 of 100 for the round figure.
    expectNear(efficiencyAt('middle A', 15), 0.65, 0.02, 'efficiency');
    expectNear(efficiencyAt('middle B', 15), 0.65, 0.02, 'efficiency');
    expect(efficiencyAt('middle A', 25)).toBeLessThan(efficiencyAt('middle A', 15));
  });
  it.each(all)('leaves more than the 30 %% approval asks for, %s hub', (tested) => {
    // Technical requirements of 29 November 2006; taken at the rated 15 km/h.
    expect(efficiencyAt(tested, 15)).toBeGreaterThanOrEqual(0.3);
  });
  it('costs about 5 W at the pedals for 3 W at 20 km/h', () => {
    // Velojournal special 2011, a good model: "about" is taken as 10 %. The lamp takes 3 W, the chain loses its 2.4 %.
    const threeW = generatorWheel(hub('middle A'), { ...lamp, outputW: 3 });
    expectNear(threeW.plugW(20), 3, 1e-9, 'electrical, W');
    expectNear(threeW.onW(20) / 0.976, 5, 0.5, 'at the pedals, W');
  });
  it('costs about 7 W at 20 km/h with an older model', () => {
    // The same blog: "light on about 7 W (older models)", taken for the worst hub of the lathe test; 10 %.
    expectNear(lit('worst').onW(20), 7, 0.7, 'drag, W');
  });
});

describe('charging from a hub', () => {
  // A bicycle magazine on electricity from the hub (mybike, 11 April 2013): it starts at about 2 W, is reliable from 14 to 18 km/h,
  // 3 W are reached at 15 to 20 km/h. A usual converter keeps 0.8.
  const converter: ConverterModel = { ...lamp, efficiency: 0.8, startSpeedKmh: 10, outputW: 10 };
  const plain = generatorWheel(hub('middle B'), converter);
  const tracking = generatorWheel(hub('middle B'), { ...converter, load: 'tracking' });

  it.each([14, 18])('has its 2 W at the plug at %d km/h', (kmh) => {
    expect(plain.plugW(kmh)).toBeGreaterThan(2);
    expect(tracking.plugW(kmh)).toBeGreaterThan(2);
  });
  it('does not yet have 2 W at 10 km/h', () => {
    expect(plain.plugW(10)).toBeLessThan(2);
    expect(tracking.plugW(10)).toBeLessThan(2);
  });
  it('reaches 3 W at 15 to 20 km/h where the load is followed', () => {
    // The edges are round figures: 0.5 km/h.
    expect(tracking.plugW(14.5)).toBeLessThan(3);
    expect(tracking.plugW(20)).toBeGreaterThan(3);
  });
  it('reaches 3 W at the hub, not at the plug, under its rated load', () => {
    // Where it does not hold: 3 W at the plug of a plain converter take 25 km/h.
    expect(lit('middle B').plugW(15)).toBeGreaterThan(3);
    expect(plain.plugW(20)).toBeLessThan(3);
    expect(plain.plugW(25)).toBeGreaterThan(3);
  });
  it('gives some 8 W at 40 km/h through a tracking converter', () => {
    // README of an open-hardware prototype that keeps about 90 %: an order of size, 25 %. Ours is a fifth above it, its iron linear.
    const open = generatorWheel(hub('middle B'), { ...converter, load: 'tracking', efficiency: 0.9 });
    expectNear(open.plugW(40), 8, 0.25 * 8, 'at the plug, W');
  });
});
