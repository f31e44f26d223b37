import { describe, expect, it } from 'vitest';
import { farStationKm, otherHeightM } from '../../shared-types/climate.ts';
import { stationNotes } from '../../shared-types/station-notes.ts';

const seen = (km: number, higherM: number) =>
  stationNotes({ place: 'West', km, higherM }).map((note) => note.replaceAll('\u00a0', ' '));

describe('stationNotes()', () => {
  it('warns of nothing up to its limits', () => {
    expect(seen(farStationKm, otherHeightM)).toEqual([]);
    expect(seen(0, -otherHeightM)).toEqual([]);
    expect(seen(10, Number.NaN)).toEqual([]);
  });

  it('warns of a station that is far away', () => {
    expect(seen(412.3, 0)).toEqual([
      'The nearest climate station, West, is 412 km away: the sky there may differ.',
    ]);
  });

  it('warns of a station much higher or lower', () => {
    expect(seen(5, -1240)).toEqual(['West lies 1,240 m lower than the leg: the sky there may differ.']);
    expect(seen(5, 612)).toEqual(['West lies 612 m higher than the leg: the sky there may differ.']);
  });

  it('gives both warnings, the distance first', () => {
    expect(seen(1412, 1240)).toEqual([
      'The nearest climate station, West, is 1,412 km away: the sky there may differ.',
      'West lies 1,240 m higher than the leg: the sky there may differ.',
    ]);
  });
});
