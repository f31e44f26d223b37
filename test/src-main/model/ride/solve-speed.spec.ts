import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generatorWheel } from '../../../../src-main/model/ride/hub.ts';
import {
  powerParts,
  riderPowerW,
  type RideModel,
  type Road,
} from '../../../../src-main/model/ride/power-balance.ts';
import {
  asRecordedKmh,
  msPerKmh,
  noDrag,
  recordedPowerW,
  steadySpeedKmh,
  walkingKmh,
  type DragAtSpeed,
} from '../../../../src-main/model/ride/solve-speed.ts';
import { expectNear } from '../../../support/near.ts';
import { anyClimb, anyConverter, anyHub, anyRide, anyRiderW, anyRoad } from '../../../support/random-ride.ts';

const ride: RideModel = {
  massKg: 115,
  dragAreaM2: 0.559,
  airDensityKgM3: 1.2,
  drivetrainEfficiency: 0.976,
  downhillCapKmh: 45,
};
const calmFlat: Road = { grade: 0, rollingCoefficient: 0.0077, headwindMs: 0 };
const stormMs = 60 * msPerKmh;
const anyAddedKg = fc.double({ min: 0, max: 40, noNaN: true });
const anyAddedW = fc.double({ min: 0, max: 200, noNaN: true });

describe('steadySpeedKmh()', () => {
  it('pushes at walking pace without power on the flat', () => {
    expect(steadySpeedKmh(0, calmFlat, ride)).toBe(walkingKmh);
  });
  it('pushes up a wall of 25 %', () => {
    expect(steadySpeedKmh(100, { ...calmFlat, grade: 0.25 }, ride)).toBe(walkingKmh);
  });
  it('pushes into a storm', () => {
    expect(steadySpeedKmh(100, { ...calmFlat, headwindMs: stormMs }, ride)).toBe(walkingKmh);
  });
  it('pushes where the drag alone takes all power', () => {
    expect(steadySpeedKmh(100, calmFlat, ride, () => 100)).toBe(walkingKmh);
  });
  it('brakes down a wall of 25 %, at the rider’s own limit', () => {
    const wall = { ...calmFlat, grade: -0.25 };
    expect(steadySpeedKmh(0, wall, ride)).toBe(45);
    expect(steadySpeedKmh(0, wall, { ...ride, downhillCapKmh: 30 })).toBe(30);
  });
  it('is blown to the limit by a storm from behind', () => {
    expect(steadySpeedKmh(100, { ...calmFlat, headwindMs: -stormMs }, ride)).toBe(45);
  });
  it('rolls without power where slope and resistance balance', () => {
    // Down 3 % without pedalling: the parts at the wheel add up to nothing.
    const down = { ...calmFlat, grade: -0.03 };
    const rolling = steadySpeedKmh(0, down, ride);
    expect(rolling).toBeGreaterThan(walkingKmh);
    expect(rolling).toBeLessThan(45);
    expectNear(riderPowerW(rolling * msPerKmh, down, ride), 0, 1e-4, 'at the pedals, W');
  });
  it('stays just below a speed at which drag sets in', () => {
    // 100 W give 19.1 km/h freely; 20 W more from 18 km/h on would take the rider below 18.
    const fromEighteen = steadySpeedKmh(100, calmFlat, ride, (kmh) => (kmh < 18 ? 0 : 20));
    expect(fromEighteen).toBeLessThan(18);
    expectNear(fromEighteen, 18, 1e-8, 'speed, km/h');
  });

  it('always finds a speed between walking and braking', () => {
    fc.assert(
      fc.property(
        anyRide,
        anyRiderW,
        anyRoad,
        anyHub,
        anyConverter,
        (anyone, watts, road, hub, converter) => {
          const wheel = generatorWheel(hub, converter);
          const kmh = steadySpeedKmh(watts, road, anyone, (speedKmh) => wheel.onW(speedKmh));
          expect(Number.isFinite(kmh)).toBe(true);
          expect(kmh).toBeGreaterThanOrEqual(walkingKmh);
          expect(kmh).toBeLessThanOrEqual(anyone.downhillCapKmh);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('spends the rider’s power on the sum of its parts', () => {
    fc.assert(
      fc.property(
        anyRide,
        anyRiderW,
        anyRoad,
        anyHub,
        anyConverter,
        (anyone, watts, road, hub, converter) => {
          const wheel = generatorWheel(hub, converter);
          const kmh = steadySpeedKmh(watts, road, anyone, (speedKmh) => wheel.onW(speedKmh));
          const needed = (atKmh: number): number => {
            const { airW, rollingW, bearingsW, slopeW } = powerParts(atKmh * msPerKmh, road, anyone);
            return (airW + rollingW + bearingsW + slopeW + wheel.onW(atKmh)) / anyone.drivetrainEfficiency;
          };
          const start = wheel.startSpeedKmh!;
          if (kmh === walkingKmh) expect(needed(kmh)).toBeGreaterThan(watts - 1e-4);
          else if (kmh === anyone.downhillCapKmh) expect(needed(kmh)).toBeLessThan(watts + 1e-4);
          else if (Math.abs(start - kmh) > 1e-6) expectNear(needed(kmh), watts, 1e-4, 'at the pedals, W');
          else {
            // Where the converter starts the need jumps past the rider's power.
            expect(needed(start - 1e-6)).toBeLessThan(watts + 1e-3);
            expect(needed(start + 1e-6)).toBeGreaterThan(watts - 1e-3);
          }
        },
      ),
      { numRuns: 1000, seed: 7 },
    );
  });

  it('is never slower with more power', () => {
    fc.assert(
      fc.property(anyRide, anyRiderW, anyAddedW, anyRoad, (anyone, watts, addedW, road) => {
        const more = steadySpeedKmh(watts + addedW, road, anyone);
        expect(more).toBeGreaterThanOrEqual(steadySpeedKmh(watts, road, anyone));
      }),
    );
  });
  it('is never faster uphill with more mass', () => {
    fc.assert(
      fc.property(anyRide, anyRiderW, anyAddedKg, anyClimb, (anyone, watts, addedKg, road) => {
        const heavier = { ...anyone, massKg: anyone.massKg + addedKg };
        const alone = steadySpeedKmh(watts, road, anyone);
        expect(steadySpeedKmh(watts, road, heavier)).toBeLessThanOrEqual(alone);
      }),
    );
  });
  it('is never faster with more drag', () => {
    fc.assert(
      fc.property(anyRide, anyRiderW, anyRoad, anyAddedW, anyAddedW, (anyone, watts, road, dragW, moreW) => {
        const some = steadySpeedKmh(watts, road, anyone, () => dragW);
        expect(steadySpeedKmh(watts, road, anyone, () => dragW + moreW)).toBeLessThanOrEqual(some);
      }),
    );
  });
});

describe('asRecordedKmh()', () => {
  const loaded = { ...ride, massKg: ride.massKg + 5 };
  const climb = { ...calmFlat, grade: 0.05 };
  const anyRecordedKmh = fc.double({ min: 0.5, max: 120, noNaN: true });
  /** By a rider of 100 W. */
  const again = (kmh: number, road: Road, as: RideModel, dragW: DragAtSpeed = noDrag, bare = ride): number =>
    asRecordedKmh(kmh, recordedPowerW(kmh, road, bare, 100), road, bare, as, dragW);

  it('is unchanged where the rider braked', () => {
    expect(again(30, { ...calmFlat, grade: -0.1 }, loaded, () => 10)).toBe(30);
  });
  it('is unchanged where half the power holds it still', () => {
    // In town at 10 km/h on the flat: 28 W and 7 W of drag are less than 50 W.
    expect(again(10, calmFlat, loaded, () => 7)).toBe(10);
  });
  it('makes no jump where a descent begins to need the rider', () => {
    const at = (gradePct: number): number => again(18, { ...calmFlat, grade: gradePct / 100 }, ride, () => 6);
    for (let gradePct = -3; gradePct < 1; gradePct += 0.01)
      expect(Math.abs(at(gradePct) - at(gradePct + 0.01))).toBeLessThan(0.1);
  });
  it('is unchanged at walking pace and below', () => {
    expect(again(walkingKmh, climb, loaded, () => 10)).toBe(walkingKmh);
    expect(again(2, climb, loaded, () => 10)).toBe(2);
  });
  it('falls to walking pace and no further', () => {
    expect(again(4.5, climb, loaded, () => 500)).toBe(walkingKmh);
  });
  it('keeps a recorded speed above the fastest downhill', () => {
    // 50 km/h pedalled down 2 % with a limit of 45 km/h: nothing added, nothing changed.
    expectNear(again(50, { ...calmFlat, grade: -0.02 }, ride), 50, 1e-6, 'speed, km/h');
  });
  it('is slower uphill with more mass, by the mass', () => {
    // At 5 % and 8 km/h nearly all power lifts mass: 5 kg of 115 are 4 %.
    expectNear(again(8, climb, loaded) / 8, 115 / 120, 0.005, 'share of the speed');
  });
  it('is as recorded when nothing is added', () => {
    fc.assert(
      fc.property(anyRide, anyRoad, anyRecordedKmh, (anyone, road, kmh) => {
        expectNear(again(kmh, road, anyone, noDrag, anyone), kmh, 1e-6, 'speed, km/h');
      }),
    );
  });
  it('is never faster with a hub, whether charging or off', () => {
    fc.assert(
      fc.property(
        anyRide,
        anyRoad,
        anyRecordedKmh,
        anyHub,
        anyConverter,
        (anyone, road, kmh, hub, converter) => {
          const wheel = generatorWheel(hub, converter);
          const off = again(kmh, road, anyone, wheel.offW, anyone);
          expect(off).toBeLessThanOrEqual(kmh + 1e-6);
          expect(again(kmh, road, anyone, wheel.onW, anyone)).toBeLessThanOrEqual(off + 1e-6);
        },
      ),
    );
  });
});
