import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitByTime, type RiddenPiece } from '../../../../src-main/model/ride/stages.ts';
import { expectNear } from '../../../support/near.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const anyPieces: fc.Arbitrary<readonly RiddenPiece[]> = fc.array(
  fc.record({ km: between(0.01, 200), hours: between(0.01, 20), plugWh: between(0, 100) }),
  { minLength: 1, maxLength: 40 },
);
const anyStages = fc.integer({ min: 1, max: 366 });

function totals(pieces: readonly RiddenPiece[]): RiddenPiece {
  const sum = (of: (piece: RiddenPiece) => number): number =>
    pieces.reduce((all, piece) => all + of(piece), 0);
  return { km: sum(({ km }) => km), hours: sum(({ hours }) => hours), plugWh: sum(({ plugWh }) => plugWh) };
}

const climb: RiddenPiece = { km: 16, hours: 2, plugWh: 0 };
const valley: RiddenPiece = { km: 40, hours: 2, plugWh: 6 };

describe('splitByTime()', () => {
  it('skips a piece that takes no time', () => {
    const [stage] = splitByTime([{ km: 0, hours: 0, plugWh: 0 }, valley], 1);
    expect(stage).toEqual({ speedKmh: 20, plugW: 3 });
  });
  it('is the whole in a single stage', () => {
    expect(splitByTime([climb, valley], 1)).toEqual([{ speedKmh: 14, plugW: 1.5 }]);
  });
  it('keeps pieces apart that last a stage each', () => {
    expect(splitByTime([climb, valley], 2)).toEqual([
      { speedKmh: 8, plugW: 0 },
      { speedKmh: 20, plugW: 3 },
    ]);
  });
  it('cuts a piece where a stage ends', () => {
    // Four hours in three stages: the middle one has 40 min of each.
    const [, middle] = splitByTime([climb, valley], 3);
    expectNear(middle!.speedKmh, 14, 1e-12, 'speed, km/h');
    expectNear(middle!.plugW, 1.5, 1e-12, 'at the plug, W');
  });
  it('makes equal stages of one piece, however many', () => {
    const stages = splitByTime([valley], 7);
    expect(stages).toHaveLength(7);
    for (const { speedKmh, plugW } of stages) {
      expectNear(speedKmh, 20, 1e-9, 'speed, km/h');
      expectNear(plugW, 3, 1e-9, 'at the plug, W');
    }
  });
  it('goes the other way when the pieces do', () => {
    fc.assert(
      fc.property(anyPieces, fc.integer({ min: 1, max: 20 }), (pieces, count) => {
        const there = splitByTime(pieces, count);
        const back = splitByTime(pieces.toReversed(), count).toReversed();
        there.forEach(({ speedKmh }, stage) => {
          expectNear(back[stage]!.speedKmh, speedKmh, 1e-6 * speedKmh, 'speed, km/h');
        });
      }),
    );
  });
  it('keeps the km and the Wh of the pieces', () => {
    fc.assert(
      fc.property(anyPieces, anyStages, (pieces, count) => {
        const whole = totals(pieces);
        const stageHours = whole.hours / count;
        const stages = splitByTime(pieces, count);
        expect(stages).toHaveLength(count);
        const km = stages.reduce((sum, { speedKmh }) => sum + speedKmh * stageHours, 0);
        const plugWh = stages.reduce((sum, { plugW }) => sum + plugW * stageHours, 0);
        expectNear(km, whole.km, 1e-9 * whole.km, 'distance, km');
        expectNear(plugWh, whole.plugWh, 1e-9 * (1 + whole.plugWh), 'at the plug, Wh');
      }),
    );
  });
  it('has no stage outside the range of its pieces', () => {
    fc.assert(
      fc.property(anyPieces, anyStages, (pieces, count) => {
        const speeds = pieces.map(({ km, hours }) => km / hours);
        for (const { speedKmh } of splitByTime(pieces, count)) {
          expect(speedKmh).toBeGreaterThanOrEqual(Math.min(...speeds) * (1 - 1e-6));
          expect(speedKmh).toBeLessThanOrEqual(Math.max(...speeds) * (1 + 1e-6));
        }
      }),
    );
  });
});
