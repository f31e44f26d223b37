import { describe, expect, it } from 'vitest';
import type { GradeShare } from '../../../../../shared-types/track.ts';
import {
  gradeBars,
  gradeFigure,
  gradeFinding,
} from '../../../../../src-renderer/views/tours/leg-ride/grade-figure.ts';

const palette = (property: string): string => property;
const grades = (...pairs: readonly (readonly [number, number])[]): readonly GradeShare[] =>
  pairs.map(([gradePct, share]) => ({ gradePct, share }));
const finding = (...pairs: readonly (readonly [number, number])[]): string =>
  gradeFinding(grades(...pairs), 'en-GB').replaceAll('\u202f', ' ');

describe('gradeFinding()', () => {
  it('says when all is level', () => {
    expect(finding([0, 1])).toBe('All of the way is level');
    expect(finding([-1, 0.3], [0, 0.4], [1, 0.3])).toBe('All of the way is level');
  });

  it('counts climbs and not descents as steep', () => {
    expect(finding([-8, 0.4], [0, 0.6])).toBe('60 % of the way is level, no climb is steeper than 1 %');
  });

  it('makes no steepest climb of a few metres', () => {
    expect(finding([0, 0.497], [3.5, 0.5], [5, 0.003])).toBe(
      '50 % of the way is level, no climb is steeper than 3.5 %',
    );
  });

  it('says how much of the way climbs steeply', () => {
    expect(finding([-7, 0.1], [0, 0.67], [6, 0.14], [6.5, 0.04], [9, 0.05])).toBe(
      '67 % of the way is level, 9 % climbs at more than 6 %',
    );
  });
});

describe('gradeBars()', () => {
  it('has no bar without a grade', () => {
    expect(gradeBars([])).toEqual([]);
  });

  it('keeps the room of grades that are not ridden', () => {
    expect(gradeBars(grades([-2, 0.4], [1, 0.6]))).toEqual(grades([-2, 0.4], [-1, 0], [0, 0], [1, 0.6]));
  });

  it('adds up the grades that round to one bar', () => {
    const bars = gradeBars(grades([1.6, 0.3], [2.4, 0.7]));
    expect(bars).toEqual([{ gradePct: 2, share: 1 }]);
  });
});

describe('gradeFigure()', () => {
  const figure = gradeFigure(grades([-1.7, 0.25], [0, 0.75]), 'en-GB');

  it('draws shares of the distance by whole per cent', () => {
    const { labels, datasets } = figure.draw(palette).data;
    expect(labels).toEqual(['\u22122\u202f%', '\u22121\u202f%', '0\u202f%']);
    expect(datasets[0]?.data).toEqual([25, 0, 75]);
  });

  it('has the grades themselves behind it', () => {
    expect(figure.table().rows).toEqual([
      [-1.7, 25],
      [0, 75],
    ]);
  });

  it('says what it calls level', () => {
    expect(figure.subtitle).toContain('Level: no steeper than 1\u202f% either way.');
  });
});
