import { describe, expect, it } from 'vitest';
import { distanceText, stationText } from '../../../../src-renderer/views/tours/station-text.ts';

const plain = (text: string | null): string | null => text?.replaceAll('\u00a0', ' ') ?? null;
const riga = { place: 'Riga', country: 'Latvia' };

describe('stationText()', () => {
  it('says no height while that of the leg is none', () => {
    const text = stationText({ ...riga, km: 12, higherM: Number.NaN }, 'en-GB');
    expect(plain(text)).toBe('Riga, Latvia, 12 km away');
  });

  it('says nothing of a distance that rounds to nothing', () => {
    expect(stationText({ ...riga, km: 0.4, higherM: -0.3 }, 'en-GB')).toBe('Riga, Latvia');
  });

  it('gives distance and height as the rider sees them', () => {
    const text = stationText({ ...riga, km: 1234, higherM: 212 }, 'en-GB');
    expect(plain(text)).toBe('Riga, Latvia, 1,234 km away, 212 m higher than the leg');
  });

  it('says lower in a word, not with a minus', () => {
    const text = stationText({ ...riga, km: 12, higherM: -1240 }, 'en-GB');
    expect(plain(text)).toBe('Riga, Latvia, 12 km away, 1,240 m lower than the leg');
  });
});

describe('distanceText()', () => {
  it('is empty at the station itself, and where nothing is known', () => {
    expect([distanceText(0, 0), distanceText(0, 0.4), distanceText(0, Number.NaN)]).toEqual(['', '', '']);
  });

  it('leaves out what the heading of its column says', () => {
    expect(plain(distanceText(12.4, 212, 'en-GB'))).toBe('12 km away, 212 m higher');
  });
});
