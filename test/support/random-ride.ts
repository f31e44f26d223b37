import fc from 'fast-check';
import type { TrackPiece } from '../../shared-types/track.ts';
import type { ConverterModel, HubModel } from '../../src-main/model/ride/hub.ts';
import type { RideModel, Road } from '../../src-main/model/ride/power-balance.ts';

/* Riders, roads, wheels and tracks from end to end of what the workbench takes, and somewhat beyond. */

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Power at the pedals, W: from rolling only to a strong rider's. */
export const anyRiderW = fc.oneof(between(0, 400), fc.constant(0));

export const anyRide: fc.Arbitrary<RideModel> = fc.record({
  massKg: between(40, 350),
  dragAreaM2: between(0.2, 1.2),
  airDensityKgM3: between(0.5, 1.5),
  drivetrainEfficiency: between(0.8, 1),
  downhillCapKmh: between(15, 90),
});

const steepest = 0.25;
const strongestWindMs = 60 / 3.6;
const headwindMs = fc.oneof(
  between(-strongestWindMs, strongestWindMs),
  fc.constantFrom(-strongestWindMs, 0, strongestWindMs),
);

export const anyRoad: fc.Arbitrary<Road> = fc.record({
  grade: fc.oneof(between(-steepest, steepest), fc.constantFrom(-steepest, 0, steepest)),
  rollingCoefficient: between(0.002, 0.045),
  headwindMs,
});

/** Level or uphill. */
export const anyClimb: fc.Arbitrary<Road> = anyRoad.map((road) => ({ ...road, grade: Math.abs(road.grade) }));

const anyRating = fc.record({ as: fc.constant('rating'), ratedW: between(0.5, 12) } as const);

/** Readings of a rider with a meter: speeds rise, powers may do anything. */
const anyCurve = fc
  .record({
    readAt: fc.constantFrom('hub', 'plug'),
    firstKmh: between(0, 15),
    readings: fc.array(fc.record({ kmhOn: between(0.5, 20), powerW: between(0, 15) }), {
      minLength: 2,
      maxLength: 12,
    }),
  } as const)
  .map(({ readAt, firstKmh, readings }) => {
    let speedKmh = firstKmh;
    const points = readings.map(({ kmhOn, powerW }) => ({ speedKmh: (speedKmh += kmhOn), powerW }));
    return { as: 'curve', readAt, points } as const;
  });

export const anyHub: fc.Arbitrary<HubModel> = fc.record({
  power: fc.oneof(anyRating, anyCurve),
  wheelCircumferenceM: between(0.9, 2.5),
  ratedCircumferenceM: between(0.9, 2.5),
  idleDragW10: between(0, 20),
  idleDragW30: between(0, 40),
});

export const anyConverter: fc.Arbitrary<ConverterModel> = fc.record({
  efficiency: between(0.2, 1),
  startSpeedKmh: between(0, 40),
  outputW: between(0.5, 20),
  load: fc.constantFrom('rated', 'tracking'),
  // None, or one of at least a nanofarad.
  seriesCapacitorUF: fc.oneof(fc.constant(0), between(0.001, 5000)),
});

/** Shares that add up to 1. */
const sharesOf = (parts: readonly number[]): readonly number[] => {
  const whole = parts.reduce((sum, part) => sum + part, 0);
  return parts.map((part) => part / whole);
};

const anyStretches = fc
  .array(
    fc.record({
      gradePct: fc.integer({ min: -25, max: 25 }),
      speedKmh: fc.option(between(0.5, 80)),
      part: between(0.05, 1),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((stretches) => {
    const shares = sharesOf(stretches.map(({ part }) => part));
    return stretches.map(({ gradePct, speedKmh }, index) => ({ gradePct, speedKmh, share: shares[index]! }));
  });

/** A track in pieces; some stretches with a recorded speed, some without. */
export const anyPieces: fc.Arbitrary<readonly TrackPiece[]> = fc.array(
  fc.record({ distanceKm: between(0.1, 60), stretches: anyStretches }),
  { minLength: 1, maxLength: 8 },
);
