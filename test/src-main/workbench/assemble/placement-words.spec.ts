import { describe, expect, it } from 'vitest';
import { usualPlacement, type Placement } from '../../../../shared-types/scenario.ts';
import { placementWords } from '../../../../src-main/workbench/assemble/placement-words.ts';

const words = (change: Partial<Placement>): string =>
  placementWords({ ...usualPlacement, ...change }).replaceAll('\u202f', ' ');

describe('placementWords()', () => {
  it('says nothing of tilt, stops and hours of a panel packed away', () => {
    expect(
      words({
        whileRiding: 'packed',
        atStops: 'packed',
        inCamp: 'packed',
        onlyAtStops: ['Lunch'],
        campFromH: 9,
      }),
    ).toBe('packed away while riding, packed away at stops, packed away in camp');
  });

  it('says how the usual panel lies', () => {
    expect(words({})).toBe('flat on the rack at 60 % of the light, aimed at stops, aimed in camp');
  });

  it('gives the tilts, and which way it faces', () => {
    expect(words({ whileRiding: 'tilted', inCamp: 'tilted' })).toBe(
      'tilted 30° on the rack at 60 % of the light, aimed at stops, tilted 45° facing 180° in camp',
    );
  });

  it('names the stops and the hours in camp where not all count', () => {
    expect(words({ onlyAtStops: ['Lunch', 'Tea, late'], campFromH: 15, campToH: 19 })).toMatch(
      /aimed at stops: Lunch; Tea, late, aimed in camp from 15 to 19 h$/,
    );
  });
});
