import { describe, expect, it } from 'vitest';
import type { StoredCourse } from '../../../../shared-types/comparison.ts';
import {
  lowestOfEach,
  pointHours,
  storedDrawings,
  storedSubtitle,
} from '../../../../src-main/sheet/figures/stored.ts';
import { comparisonFixture, scenarioFixture } from '../../../support/comparison-fixture.ts';
import { attributesOf, numbersOf, textsIn } from './read-svg.ts';

const widthPt = 160;

/** A tour of so many days, one point an hour, all of them the same. */
function level(days: number, wh: number, capacityWh: number): StoredCourse {
  const all = Array<number>(days * 24).fill(wh);
  return { capacityWh, pointsPerDay: 24, lowWh: all, middleWh: all, highWh: all };
}

function drawn(stored: StoredCourse, days: number, label = 'Hub'): string {
  const { tour } = comparisonFixture();
  const scenarios = [scenarioFixture('hub', { label, stored })];
  return storedDrawings(comparisonFixture({ scenarios, tour: { ...tour, days } }))[0]!.svg(widthPt);
}

describe('pointHours', () => {
  // By hand: at most 160 points, so 6 days by the hour are 144 and 7 days would be 168.
  it.each([
    [0, 1],
    [1, 1],
    [6, 1],
    [7, 2],
    [13, 2],
    [14, 3],
    [24, 4],
    [160, 24],
    [366, 24],
  ])('of %i days are %i', (days, hours) => {
    expect(pointHours(days)).toBe(hours);
  });
});

describe('lowestOfEach', () => {
  it('is nothing of nothing', () => {
    expect(lowestOfEach([], 24, 4)).toEqual([]);
  });

  it('keeps a short rest', () => {
    expect(lowestOfEach([5, 3, 4, 1, 2], 24, 2)).toEqual([3, 1, 2]);
  });

  it('takes as many points as fall into the hours', () => {
    // Four points an hour.
    expect(lowestOfEach([9, 8, 7, 6, 5, 4, 3, 2], 96, 1)).toEqual([6, 2]);
  });

  it('keeps each point where points are rarer than hours asked for', () => {
    expect(lowestOfEach([9, 8], 6, 1)).toEqual([9, 8]);
  });
});

describe('storedDrawings', () => {
  it.each([
    ['that stores nothing', level(3, 0, 0), 3],
    ['of one day', level(1, 4, 9), 1],
    ['of one point', { capacityWh: 9, pointsPerDay: 1, lowWh: [1], middleWh: [2], highWh: [3] }, 1],
    ['of 366 days', level(366, 12, 90), 366],
  ])('hold numbers alone for a tour %s', (_, stored, days) => {
    for (const value of numbersOf(drawn(stored, days))) expect(value).not.toBeNaN();
    for (const value of numbersOf(drawn(stored, days)))
      expect(Math.abs(value)).toBeLessThanOrEqual(2 * widthPt);
  });

  it('keep a nasty label text, and cut one that is too long', () => {
    expect(textsIn(drawn(level(2, 1, 2), 2, '<b>A & B</b>'))).toContain('<b>A & B</b>');
    const [title] = textsIn(drawn(level(2, 1, 2), 2, 'W'.repeat(80)));
    expect(title).toMatch(/^W{10,50}…$/u);
  });

  it('end at the date of the last day', () => {
    // The fixture begins on 3 May 2027 and has 24 days.
    const { stored } = scenarioFixture('hub');
    const texts = textsIn(drawn(stored, 24));
    expect(texts).toContain('3 May');
    expect(texts).toContain('26 May');
  });

  it('share one scale, so that half the energy stands half as high', () => {
    const scenarios = [
      scenarioFixture('banks', { stored: level(2, 100, 100) }),
      scenarioFixture('hub', { stored: level(2, 50, 50) }),
      scenarioFixture('panel', { stored: level(2, 0, 50) }),
    ];
    const heights = storedDrawings(comparisonFixture({ scenarios })).map(({ svg }) => {
      // The course of the middle history is the path without a fill.
      const course = attributesOf(svg(widthPt), 'path').find(({ fill }) => fill === 'none');
      return Number(/^M[\d.]+ ([\d.]+)/u.exec(course!['d']!)![1]);
    });
    expect((heights[0]! + heights[2]!) / 2).toBeCloseTo(heights[1]!, 1);
    expect(heights[0]!).toBeLessThan(heights[2]!);
  });
});

describe('storedSubtitle', () => {
  it('says what a point and the scale stand for', () => {
    const { tour } = comparisonFixture();
    expect(storedSubtitle({ tour }, 183)).toContain('0 to 183\u00a0Wh, the lowest of every 4 hours');
    expect(storedSubtitle({ tour: { ...tour, days: 3 } }, 183)).toContain('the lowest of every hour.');
  });
});
