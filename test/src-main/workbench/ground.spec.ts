import { describe, expect, it } from 'vitest';
import { meanRadiationWhM2 } from '../../../src-main/model/flow/tour-sun.ts';
import { drawnTours } from '../../../src-main/workbench/ground.ts';
import { demoGround } from '../../support/demo-ground.ts';

describe('drawnTours()', () => {
  it('draws a ground once and another ground anew', () => {
    const tours = drawnTours();
    const first = tours(demoGround());
    expect(tours(demoGround())).toBe(first);
    expect(tours(demoGround({ groundId: 'another' }))).not.toBe(first);
    expect(tours(demoGround())).toBe(first);
  });

  it('keeps only those drawn last', () => {
    const tours = drawnTours();
    const first = tours(demoGround());
    for (const groundId of ['a', 'b', 'c', 'd']) tours(demoGround({ groundId }));
    const again = tours(demoGround());
    expect(again).not.toBe(first);
    expect(again.skies.clearness).toEqual(first.skies.clearness);
  });

  it('names the leg whose station is not known', () => {
    expect(() => drawnTours()(demoGround({ stations: [] }))).toThrow('Leg 1 names a climate station');
  });

  it('makes every day as much duller as it is told', () => {
    const tours = drawnTours();
    const plain = tours(demoGround());
    const dull = tours(demoGround({ groundId: 'dull', sunScale: 0.8 }));
    for (const day of [0, 10, 20])
      expect(meanRadiationWhM2(dull.sun, day) / meanRadiationWhM2(plain.sun, day)).toBeCloseTo(0.8, 9);
  });
});
