import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { largestTrackBytes, largestTrackPart } from '../../../../shared-types/contract.ts';
import type { Outcome } from '../../../../shared-types/outcome.ts';
import type { TrackProfile } from '../../../../shared-types/track.ts';
import { createTrackIntake } from '../../../../src-main/workbench/track-intake/track-intake.ts';
import { heapHeld } from '../../../support/heap-held.ts';
import { gpx, passRoute, segmentsGpx, trackPoint, valleyRide } from '../../../support/gpx-text.ts';
import { expectNear } from '../../../support/near.ts';
import { gradeShares, recordedHours } from '../../../support/track-points.ts';

function taken(...parts: readonly string[]): Outcome<TrackProfile> {
  const intake = createTrackIntake('test.gpx');
  for (const part of parts) {
    const outcome = intake.add(part);
    if (!outcome.ok) return outcome;
  }
  return intake.finish();
}

function profileOf(...parts: readonly string[]): TrackProfile {
  const outcome = taken(...parts);
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
}

function refusal(...parts: readonly string[]): { readonly code: string; readonly message: string } {
  const outcome = taken(...parts);
  if (outcome.ok) throw new Error('taken in');
  return outcome.error;
}

/** The beginning of a file, up to a text that may go on for ever. */
const opening = '<gpx xmlns="http://www.topografix.com/GPX/1/1"><metadata><desc>';

describe('a track that is refused', () => {
  it.each([
    { what: 'a truncated file', text: valleyRide().slice(0, 9000), message: /cut off \(line \d+\)\.$/ },
    { what: 'one point', text: segmentsGpx([trackPoint('45', '7')]), message: /at least two points/ },
    {
      what: 'waypoints only',
      text: gpx('<wpt lat="45" lon="7"/><wpt lat="46" lon="7"/>'),
      message: /two points/,
    },
    {
      what: 'all points equal',
      text: segmentsGpx(new Array<string>(50).fill(trackPoint('45', '7', '<ele>100</ele>'))),
      message: /too short: all its points lie in one place, .* at least 100.m/,
    },
    {
      what: 'a track of a few metres',
      // 0.0007 degrees of latitude are 77.8 m.
      text: segmentsGpx([trackPoint('45', '7'), trackPoint('45.0007', '7')]),
      message: /too short: it is only 77.m long, and a leg needs at least 100.m/,
    },
    {
      what: 'two points in two segments',
      text: segmentsGpx([trackPoint('45', '7')], [trackPoint('46', '7')]),
      message: /too short: all its points lie in one place/,
    },
    {
      what: 'a track twice around the Earth',
      text: segmentsGpx(
        Array.from({ length: 25 }, (_, index) => trackPoint('0', String(((index * 45) % 360) - 180))),
      ),
      message: /Distance: allowed is a number .* 40,000 km/,
    },
    {
      what: 'a ride above the highest road',
      text: segmentsGpx(['45', '46'].map((lat) => trackPoint(lat, '7', '<ele>8000</ele>'))),
      message: /Height: allowed is a number .* 6,000 m/,
    },
  ])('says what is wrong with $what', ({ text, message }) => {
    expect(refusal(text)).toMatchObject({ code: 'unreadable' });
    expect(refusal(text).message).toMatch(message);
  });

  it('is too large once more than 50 MB have come', () => {
    const part = 'of no use '.repeat(largestTrackPart / 10);
    const intake = createTrackIntake('endless.gpx');
    expect(intake.add(opening).ok).toBe(true);
    let outcome = intake.add(part);
    let parts = 1;
    for (; outcome.ok && parts < 60; parts += 1) outcome = intake.add(part);
    expect(outcome).toMatchObject({
      ok: false,
      error: { code: 'too-large', message: 'The track is larger than 50 MB.' },
    });
    expect(parts).toBe(largestTrackBytes / largestTrackPart);
  });

  it('is counted in bytes and not in characters', () => {
    // Three bytes a character.
    const part = '\u20ac'.repeat(largestTrackPart);
    expect(refusal(opening, ...new Array<string>(17).fill(part)).code).toBe('too-large');
  });

  it('is never held, however long its texts', () => {
    const intake = createTrackIntake('long.gpx');
    intake.add(opening);
    const before = heapHeld();
    for (let part = 0; part < 20; part += 1) {
      const text = `text ${String(part).padStart(4, '0')} `.repeat(largestTrackPart / 10);
      expect(intake.add(text)).toEqual({ ok: true, value: { points: 0 } });
    }
    // 20 MB went in.
    expect(heapHeld() - before).toBeLessThan(3e6);
  });
});

describe('a recorded ride', () => {
  const profile = profileOf(valleyRide());
  // The ride as its file was made, in whole figures: 5 km, 2.5 km and 3 km; 1000 s, 250 s and 500 s in motion.
  it('keeps the distance ridden and the climb', () => {
    expectNear(profile.distanceKm, 10.5, 0.002, 'distance, km');
    // Smoothing rounds the top off.
    expectNear(profile.ascentM, 100, 2, 'ascent, m');
    expectNear(profile.descentM, 100, 2, 'descent, m');
    expect(profile.heightShare).toBe(1);
    expectNear(profile.meanLatDeg, 47, 1e-6, 'mean latitude, deg');
  });

  it('keeps the speed of each slope and leaves the stop out', () => {
    expectNear(recordedHours(profile) * 3600, 1750, 3, 'moving time, s');
    expectNear(profile.timedShare, 1, 1e-6, 'share with a speed');
    const speedAt = (gradePct: number) =>
      profile.pieces[0]!.stretches.filter((each) => Math.round(each.gradePct) === gradePct).toSorted(
        (a, b) => b.share - a.share,
      )[0]!;
    expectNear(speedAt(2).speedKmh!, 18, 0.02, 'uphill, km/h');
    expectNear(speedAt(-4).speedKmh!, 36, 0.02, 'downhill, km/h');
    expectNear(speedAt(0).speedKmh!, 21.6, 0.02, 'on the level, km/h');
  });

  it('keeps how much of it is steep', () => {
    const shares = gradeShares(profile);
    // The rounding of top and joins takes 100 to 200 m.
    expectNear(shares.get(2)!, 5 / 10.5, 0.02, 'share at 2 %');
    expectNear(shares.get(-4)!, 2.5 / 10.5, 0.02, 'share at -4 %');
    expectNear(shares.get(0)!, 3 / 10.5, 0.02, 'share on the level');
  });

  it('is the same however it is cut into parts', () => {
    const text = valleyRide();
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: text.length }), { maxLength: 40 }), (cuts) => {
        const borders = [0, ...cuts.toSorted((a, b) => a - b), text.length];
        const parts = borders.slice(1).map((end, index) => text.slice(borders[index], end));
        expect(profileOf(...parts)).toEqual(profile);
      }),
      { numRuns: 20 },
    );
  });

  it('keeps its speeds but where the clock went back', () => {
    // The recorder set itself an hour back at the top: one step without a speed, 100 m of 10.5 km.
    const lines = valleyRide().split('\n');
    const top = lines.findIndex((line) => line.includes('<ele>300.0</ele>'));
    const back = lines.map((line, index) => (index < top ? line.replace('T06:', 'T07:') : line)).join('\n');
    const set = profileOf(back);
    expect(set.timedShare).toBeLessThan(1);
    expect(set.timedShare).toBeGreaterThan(0.98);
    for (const [gradePct, share] of gradeShares(profile))
      expectNear(gradeShares(set).get(gradePct)!, share, 1e-3, `share at ${gradePct} %`);
  });
});

describe('a route without times', () => {
  const profile = profileOf(passRoute());

  it('has slopes, and a gap in its heights bridged', () => {
    expectNear(profile.distanceKm, 6, 0.001, 'distance, km');
    expectNear(profile.heightShare, 55 / 61, 1e-9, 'share with a height');
    expectNear(profile.ascentM, 90, 2, 'ascent, m');
    expectNear(gradeShares(profile).get(3)!, 0.5, 0.03, 'share at 3 %');
    expectNear(gradeShares(profile).get(-3)!, 0.5, 0.03, 'share at -3 %');
  });

  it('has no speeds', () => {
    expect(profile.timedShare).toBe(0);
    expect(profile.pieces[0]!.stretches.every(({ speedKmh }) => speedKmh === null)).toBe(true);
  });
});
