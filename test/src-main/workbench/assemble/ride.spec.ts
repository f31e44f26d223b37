import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Item } from '../../../../shared-types/item.ts';
import type { RiddenCourse } from '../../../../src-main/model/ride/ride-course.ts';
import { generatorWheel } from '../../../../src-main/model/ride/hub.ts';
import { carriedItems, ofKind } from '../../../../src-main/workbench/assemble/kit.ts';
import { converterModel, rideLeg, wheelOf } from '../../../../src-main/workbench/assemble/ride.ts';
import { drawnTours } from '../../../../src-main/workbench/ground.ts';
import { demoGround, demoScenario } from '../../../support/demo-ground.ts';

const ground = demoGround();
const { tour, places } = drawnTours()(ground);
const on = '2027-05-03';

function linesWith(share: number | null, without: Item['kind'] = 'device') {
  const items = ground.items.map((item) =>
    item.kind === 'generator-hub'
      ? { ...item, measuredYield: share === null ? null : { value: share, on } }
      : item,
  );
  return carriedItems(demoScenario('demo-hub'), items).filter(({ item }) => item.kind !== without);
}

const ridden = (leg: number, share: number | null): RiddenCourse =>
  rideLeg(tour, leg, places[leg]!.climate, linesWith(share), 1500);

describe('a hub whose yield was measured', () => {
  it('gives nothing without a converter, whatever it was', () => {
    const wheel = wheelOf(linesWith(1.2, 'converter'))!;
    for (const kmh of [0, 10, 30]) expect(wheel.plugW(kmh)).toBe(0);
  });

  it('rides no faster and no slower for it', () => {
    const [plain, poor] = [ridden(0, null), ridden(0, 0.4)];
    expect(poor.on).toEqual(plain.on);
    expect(poor.stages.map(({ speedKmh }) => speedKmh)).toEqual(plain.stages.map(({ speedKmh }) => speedKmh));
  });

  it('never gives less on a leg for a higher yield', () => {
    const anyYield = fc.double({ min: 0.05, max: 1.5, noNaN: true });
    const anyLeg = fc.integer({ min: 0, max: tour.legs.length - 1 });
    fc.assert(
      fc.property(anyLeg, anyYield, anyYield, (leg, one, other) => {
        const low = ridden(leg, Math.min(one, other)).plugW;
        expect(ridden(leg, Math.max(one, other)).plugW).toBeGreaterThanOrEqual(low);
      }),
      { numRuns: 20 },
    );
  });
});

describe('a hub whose yield was not measured', () => {
  it('gives to the last bit what rating and converter promise', () => {
    const lines = linesWith(null);
    const [hub] = ofKind(lines, 'generator-hub');
    const [converter] = ofKind(lines, 'converter');
    const promised = generatorWheel(hub!.item, converterModel(converter!.item));
    const wheel = wheelOf(lines)!;
    for (let kmh = 0; kmh <= 60; kmh += 0.5)
      expect([wheel.plugW(kmh), wheel.onW(kmh)]).toEqual([promised.plugW(kmh), promised.onW(kmh)]);
  });

  it('is the same as one that yields all that was promised', () => {
    expect(ridden(0, null)).toEqual(ridden(0, 1));
  });
});
