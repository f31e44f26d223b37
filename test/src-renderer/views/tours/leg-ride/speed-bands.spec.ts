import { describe, expect, it } from 'vitest';
import {
  bandMiddlesKmh,
  bandWidthKmh,
  speedPhrase,
} from '../../../../../src-renderer/views/tours/leg-ride/speed-bands.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('bandWidthKmh()', () => {
  it('has some width without a band', () => {
    expect(bandWidthKmh([])).toBeGreaterThan(0);
  });
});

describe('bandMiddlesKmh()', () => {
  it('are half a band above where each begins', () => {
    const speeds = [
      { fromKmh: 0, toKmh: 5, share: 0.5 },
      { fromKmh: 5, toKmh: 10, share: 0.5 },
    ];
    expect(bandMiddlesKmh(speeds)).toEqual([2.5, 7.5]);
  });
});

describe('speedPhrase()', () => {
  it.each([
    ['all below', 0, 15, 'below 15 km/h'],
    ['what lies between', 10, 25, 'at 10 to 25 km/h'],
  ])('names %s', (_, from, to, phrase) => {
    expect(plain(speedPhrase(from, to, 'en-GB'))).toBe(phrase);
  });
});
