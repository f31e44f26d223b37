import { describe, expect, it } from 'vitest';
import { daysFigure, daysFinding } from '../../../../../src-renderer/views/tours/leg-ride/days-figure.ts';
import { legHub, legRide } from '../../../support/fake-leg-ride.ts';

const palette = (property: string): string => property;
const finding = (shortDays: number): string =>
  daysFinding(legRide(), legHub({ shortDays }), 'en-GB').replaceAll('\u00a0', ' ');

describe('daysFinding()', () => {
  it.each([
    [3, 'The hub alone falls short of 25.5 Wh on every day'],
    [2, 'The hub alone falls short of 25.5 Wh on 2 of 3 days'],
    [0, 'The hub alone gives 25.5 Wh or more on every day'],
  ])('with %s short days says so', (shortDays, text) => {
    expect(finding(shortDays)).toBe(text);
  });
});

describe('daysFigure()', () => {
  const figure = daysFigure(legRide(), legHub(), 'en-GB');

  it('sets each day against what the devices need', () => {
    const { data } = figure.draw(palette);
    expect(data.labels).toEqual(['3 May', '4 May', '5 May']);
    expect(data.datasets.map(({ label, data: values }) => [label, values])).toEqual([
      ['What the devices need, at the hub’s plug', [25.5, 25.5, 25.5]],
      ['The hub', [11, 14, 17]],
    ]);
  });

  it('has every figure of a day behind it', () => {
    const { columns, rows } = figure.table();
    expect(columns).toEqual([
      'Date',
      'Hub at the plug, Wh',
      'What the devices need, at the hub’s plug, Wh',
      'Distance, km',
      'Speed, km/h',
    ]);
    expect(rows[1]).toEqual(['2027-05-04', 14, 25.5, 101, 17]);
  });
});
