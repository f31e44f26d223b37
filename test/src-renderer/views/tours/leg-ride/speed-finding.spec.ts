import { describe, expect, it } from 'vitest';
import type { LegHub, SpeedShare } from '../../../../../shared-types/leg-ride.ts';
import { busiestRun, speedFinding } from '../../../../../src-renderer/views/tours/leg-ride/speed-finding.ts';
import { legHub } from '../../../support/fake-leg-ride.ts';

/** Bands of 5 km/h with these shares of the riding time. */
const bands = (...shares: readonly number[]): readonly SpeedShare[] =>
  shares.map((share, place) => ({ fromKmh: place * 5, toKmh: (place + 1) * 5, share }));

const finding = (speeds: readonly SpeedShare[], hub: LegHub | null = null): string =>
  speedFinding({ speeds, hub }, 'en-GB').replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');

const constant = (plugW: number): LegHub =>
  legHub({ curve: [0, 50].map((speedKmh) => ({ speedKmh, plugW, onW: 5, offW: 1 })) });

describe('busiestRun()', () => {
  it('finds none where there is no riding', () => {
    expect(busiestRun([])).toBeNull();
  });

  it('takes the fewest bands that hold most of the riding', () => {
    const run = busiestRun(bands(0.05, 0.1, 0.4, 0.42, 0.03));
    expect([run?.first.fromKmh, run?.last.toKmh]).toEqual([10, 20]);
    expect(run?.share).toBeCloseTo(0.82, 10);
  });

  it('takes the fuller of two runs as long', () => {
    expect(busiestRun(bands(0.1, 0.75, 0.15))?.first.fromKmh).toBe(5);
  });
});

describe('speedFinding()', () => {
  it('says when nobody rides', () => {
    expect(finding([])).toBe('No riding on this leg');
  });

  it('says nothing of power without something to take it', () => {
    const speeds = bands(0, 0.1, 0.9, 0);
    expect(finding(speeds)).toBe('90 % of the riding is at 10 to 15 km/h');
    expect(finding(speeds, legHub({ converter: null }))).toBe('90 % of the riding is at 10 to 15 km/h');
  });

  it('says when the hub gives nothing at these speeds', () => {
    expect(finding(bands(0.9, 0.1, 0), constant(0))).toBe(
      '90 % of the riding is below 5 km/h, where the hub gives nothing',
    );
  });

  it('gives one figure where the power stays the same', () => {
    expect(finding(bands(0, 0, 1), constant(2.5))).toBe(
      '100 % of the riding is at 10 to 15 km/h, where the hub gives 2.5 W',
    );
  });

  it('gives the least and the most of the power, between the points too', () => {
    // The curve rises by 1 W for each 6 km/h from 10 km/h on.
    const curve = [10, 16, 22].map((speedKmh) => ({ speedKmh, plugW: speedKmh / 6, onW: 5, offW: 1 }));
    expect(finding(bands(0, 0, 0.5, 0.4, 0.1, 0), legHub({ curve }))).toBe(
      '90 % of the riding is at 10 to 20 km/h, where the hub gives 1.7 to 3.3 W',
    );
  });

  it('finds a peak inside the range', () => {
    const curve = [10, 15, 20].map((speedKmh) => ({
      speedKmh,
      plugW: speedKmh === 15 ? 4 : 2,
      onW: 5,
      offW: 1,
    }));
    expect(finding(bands(0, 0, 0.5, 0.5, 0), legHub({ curve }))).toMatch(/gives 2 to 4 W$/);
  });
});
