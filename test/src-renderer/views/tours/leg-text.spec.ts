import { describe, expect, it } from 'vitest';
import { placeText, terrainText } from '../../../../src-renderer/views/tours/leg-text.ts';
import { startingTour } from '../../../../src-renderer/views/tours/new-tour.ts';
import { trackFixture } from '../../../support/track-fixture.ts';

const leg = startingTour('2027-06-01').legs[0]!;

describe('placeText()', () => {
  it.each([
    [-34.6, -58.38, '34.6° S, 58.38° W'],
    [40.8, 68.4, '40.8° N, 68.4° E'],
    [0, 0, '0° N, 0° E'],
  ])('names the half of the globe of %d, %d', (latDeg, lonDeg, text) => {
    expect(placeText({ as: 'coordinates', latDeg, lonDeg, elevationM: 0 }, 'en-GB')).toBe(text);
  });

  it('names a station as it is called', () => {
    expect(placeText({ as: 'station', station: 'Yerevan' })).toBe('Yerevan');
  });
});

describe('terrainText()', () => {
  it('gives the words of a terrain class', () => {
    expect(terrainText({ terrain: { as: 'class', terrainClass: 'flat-paved' } })).toBe('Flat, paved');
  });

  it('gives length and climb of a track', () => {
    const track = trackFixture({ distanceKm: 412.3, ascentM: 5230 });
    const text = terrainText(
      { ...leg, terrain: { as: 'track', terrainClass: 'hilly', pace: 'computed', track } },
      'en-GB',
    );
    expect(text.replaceAll('\u00a0', ' ')).toBe('Track, 412 km, 5,230 m up');
  });
});
