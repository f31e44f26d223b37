import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { display } from '../../../src-renderer/state/display.svelte.ts';
import { hubCostFinding } from '../../../src-renderer/parts/hub-cost-text.ts';
import { foundFigure } from '../../../src-renderer/views/kit-search/found-figure.ts';
import { elevationFigure } from '../../../src-renderer/views/tours/leg-ride/elevation-figure.ts';
import { speedFigure } from '../../../src-renderer/views/tours/leg-ride/speed-figure.ts';
import { terrainText } from '../../../src-renderer/views/tours/leg-text.ts';
import { stationText } from '../../../src-renderer/views/tours/station-text.ts';
import { nameWithUnit } from '../../../src-renderer/views/trade-offs/knob-units.ts';
import { limitFields } from '../../../src-renderer/views/trade-offs/limit-fields.ts';
import { stripFigure } from '../../../src-renderer/views/trade-offs/strip-figure.ts';
import { gramsChange } from '../../../src-renderer/views/upgrade-check/change-words.ts';
import { trackFixture } from '../../support/track-fixture.ts';
import { demoComparison, demoResult } from '../support/demo-comparison.ts';
import { foundKit, searchResult } from '../support/fake-kits.ts';
import { hubCost } from '../support/hub-cost.ts';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const palette = (property: string): string => property;
const track = trackFixture({
  name: 'ridge.gpx',
  distanceKm: 60,
  ascentM: 2340,
  descentM: 1100,
  heightsM: [420, 1890],
});

beforeAll(() => display.choose({ units: 'imperial', numberFormat: 'en-GB' }));
afterAll(() => display.choose({ units: 'metric', numberFormat: 'system' }));

// Expected by the pound, foot and mile of 1959: 28.349523125 g an ounce, 0.3048 m a foot, 1.609344 km a mile.
describe('in imperial units', () => {
  it('masses are in ounces', () => {
    expect(plain(hubCostFinding(hubCost()))).toBe(
      'The hub really costs 250 EUR and 14.1 oz, 10.6 oz of these on the front wheel, net',
    );
    expect(plain(gramsChange({ before: 1000, after: 1100 }))).toBe('+3.5 oz, from 35.3 oz to 38.8 oz');
    const hub = demoResult('demo-hub');
    const shown = { ...hub, values: { ...hub.values, grams: 453.592_37 } };
    expect(stripFigure('grams', shown, demoComparison()).figure).toBe('16.0');
  });

  it('heads and fields name ounces, and call them no grams', () => {
    expect(nameWithUnit('grams', 'EUR')).toBe('Mass carried, oz');
    expect(nameWithUnit('frontWheelGrams', 'EUR')).toBe('On the front wheel, oz');
    const labels = limitFields('EUR').map(({ shape }) => ('meta' in shape ? shape.meta.label : ''));
    expect(labels).toContain('Mass carried, at most');
  });

  it('charts and their tables stand on them too', () => {
    const kits = [foundKit({ grams: 453.592_37, frontWheelGrams: 0 })];
    const figure = foundFigure(searchResult({ kits }), 'EUR');
    expect(figure.table().columns).toContain('Front, oz');
    const [series] = figure.draw(palette).data.datasets;
    expect((series!.data[0] as { y: number }).y).toBeCloseTo(16, 9);
  });

  it('distances, heights and speeds of a leg are in miles, feet and miles an hour', () => {
    const { title, table } = elevationFigure(track)!;
    expect(plain(title)).toBe('Between 1,378 and 6,201 ft, 7,677 ft up and 3,609 ft down');
    expect(table().columns).toEqual(['Distance, mi', 'Height, ft']);
    expect(table().rows.at(-1)?.[0]).toBeCloseTo(37.282, 3);
    const terrain = { as: 'track', terrainClass: 'hilly', pace: 'computed', track } as const;
    expect(plain(terrainText({ terrain }))).toBe('Track, 37.3 mi, 7,677 ft up');
    const far = { place: 'Riga', country: 'Latvia', km: 100, higherM: 100 };
    expect(plain(stationText(far))).toBe('Riga, Latvia, 62.1 mi away, 328 ft higher than the leg');
    const speeds = [{ fromKmh: 0, toKmh: 16.093_44, share: 1 }];
    expect(plain(speedFigure({ speeds, hub: null }).title)).toBe('100\u202f% of the riding is below 10 mph');
  });
});
