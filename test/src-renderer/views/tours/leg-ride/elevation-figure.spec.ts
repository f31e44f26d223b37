import { describe, expect, it } from 'vitest';
import {
  elevationFigure,
  profileOf,
} from '../../../../../src-renderer/views/tours/leg-ride/elevation-figure.ts';
import { trackFixture } from '../../../../support/track-fixture.ts';

const palette = (property: string): string => property;
const track = trackFixture({
  name: 'ridge.gpx',
  distanceKm: 60,
  ascentM: 2340,
  descentM: 1100,
  heightsM: [650, 420, 1890, 1660],
});

describe('profileOf()', () => {
  it('puts a lone height at the start', () => {
    expect(profileOf(trackFixture({ heightsM: [300] }))).toEqual([{ x: 0, y: 300 }]);
  });

  it('spreads the heights from the start to the end', () => {
    expect(profileOf(track)).toEqual([
      { x: 0, y: 650 },
      { x: 20, y: 420 },
      { x: 40, y: 1890 },
      { x: 60, y: 1660 },
    ]);
  });
});

describe('elevationFigure()', () => {
  it('is none for a track without heights', () => {
    expect(elevationFigure(trackFixture({ heightsM: [] }))).toBeNull();
  });

  it('says how low, how high, and how much up and down', () => {
    expect(elevationFigure(track, 'en-GB')?.title.replaceAll('\u00a0', ' ')).toBe(
      'Between 420 and 1,890 m, 2,340 m up and 1,100 m down',
    );
  });

  it('calls a track level that neither climbs nor falls by a metre', () => {
    const flat = trackFixture({ ascentM: 0, descentM: 0, heightsM: [420.2, 419.8, 420.1] });
    expect(elevationFigure(flat, 'en-GB')?.title).toBe('Level at 420\u00a0m');
  });

  it('draws the whole way and no more', () => {
    const drawing = elevationFigure(track)?.draw(palette);
    expect(drawing?.options?.scales?.['x']).toMatchObject({ type: 'linear', min: 0, max: 60 });
    expect(drawing?.data.datasets[0]?.data).toEqual(profileOf(track));
  });

  it('has heights in whole metres behind it', () => {
    const rough = trackFixture({ distanceKm: 1, heightsM: [299.6, 300.49] });
    expect(elevationFigure(rough)?.table().rows).toEqual([
      [0, 300],
      [1, 300],
    ]);
  });

  it('has distance and height behind it', () => {
    expect(elevationFigure(track)?.table()).toMatchObject({
      columns: ['Distance, km', 'Height, m'],
      rows: [
        [0, 650],
        [20, 420],
        [40, 1890],
        [60, 1660],
      ],
    });
  });
});
