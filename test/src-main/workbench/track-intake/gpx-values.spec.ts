import { describe, expect, it } from 'vitest';
import {
  readCoordinate,
  readElevationM,
  readTimeS,
} from '../../../../src-main/workbench/track-intake/gpx-values.ts';

describe('readCoordinate()', () => {
  it.each([
    '',
    '  ',
    'north',
    '0x10',
    '1,5',
    '4 5',
    '--4',
    '.',
    '1e',
    'Infinity',
    'NaN',
    '90.0001',
    '-91',
    '9'.repeat(400),
  ])('refuses %o', (text) => {
    expect(readCoordinate(text, 90)).toBeNull();
  });

  it.each([
    ['45', 45],
    [' -7.25\n', -7.25],
    ['+.5', 0.5],
    ['12.', 12],
    ['-1.5E-4', -0.00015],
    ['90', 90],
    ['-90', -90],
  ])('reads %o as %d', (text, valueDeg) => {
    expect(readCoordinate(text, 90)).toBe(valueDeg);
  });
});

describe('readElevationM()', () => {
  it.each(['', 'high', '-500.1', '9000.5', '1e9', '-32768', 'NaN'])('counts %o as missing', (text) => {
    expect(readElevationM(text)).toBeNaN();
  });

  it('reads heights from below the sea to the highest', () => {
    expect(['-500', ' 0 ', '1234.5', '9000'].map(readElevationM)).toEqual([-500, 0, 1234.5, 9000]);
  });
});

describe('readTimeS()', () => {
  it.each([
    '',
    'noon',
    '2027-05-03',
    '08:00:00Z',
    '2027-05-03T25:00:00Z',
    '2027-13-03T08:00:00Z',
    'May 3, 2027',
    '1',
  ])('counts %o as missing', (text) => {
    expect(readTimeS(text)).toBeNaN();
  });

  it('reads a time with a zone, a fraction or neither', () => {
    const eight = Date.UTC(2027, 4, 3, 8) / 1000;
    expect(readTimeS('2027-05-03T08:00:00Z')).toBe(eight);
    expect(readTimeS('\n2027-05-03T08:00:00.250Z ')).toBe(eight + 0.25);
    expect(readTimeS('2027-05-03T13:45:00+05:45')).toBe(eight);
  });

  it('takes a time without a zone as UTC', () => {
    expect(readTimeS('2027-05-03T08:00:00')).toBe(Date.UTC(2027, 4, 3, 8) / 1000);
  });
});
