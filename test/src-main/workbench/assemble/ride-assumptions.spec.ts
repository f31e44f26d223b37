import { describe, expect, it } from 'vitest';
import { demoItems, demoScenarios } from '../../../../db/demo/demo.ts';
import type { Assumption } from '../../../../shared-types/comparison.ts';
import type { Item } from '../../../../shared-types/item.ts';
import type { Leg, Tour } from '../../../../shared-types/tour.ts';
import { carriedItems } from '../../../../src-main/workbench/assemble/kit.ts';
import { hubAssumptions, rideAssumptions } from '../../../../src-main/workbench/assemble/ride-assumptions.ts';
import { legFixture, tourFixture } from '../../../support/station-fixture.ts';
import { trackOf } from '../../../support/track-fixture.ts';

const named = (list: readonly Assumption[], name: string) => list.find((each) => each.name === name);
const ofTour = (changes: Partial<Tour>, leg: Partial<Leg> = {}) =>
  rideAssumptions({ ...tourFixture([legFixture(leg)]), ...changes });

describe('rideAssumptions()', () => {
  it('tells the usual bicycle from the rider’s own', () => {
    const tour = tourFixture([legFixture()]);
    expect(named(ofTour({}), 'Air drag')).toMatchObject({ basis: 'default' });
    const own = ofTour({ bicycle: { ...tour.bicycle, dragAreaM2: 0.48 } });
    expect(named(own, 'Air drag')?.basis).toBe('rider');
    expect(named(own, 'Air drag')?.value).toMatch(/^0.480? m/);
    expect(named(own, 'Air drag')?.source).toBe('tour');
    expect(named(own, 'On the road')).toMatchObject({ basis: 'default' });
  });

  it('says of each leg what its slopes, speeds and ground are', () => {
    expect(named(ofTour({}), 'Slopes and ground')?.value).toBe('Invented leg: rolling');
    const track = trackOf([[{ gradePct: 0, speedKmh: 15, share: 1 }]]);
    const recorded = ofTour({}, { terrain: { as: 'track', terrainClass: 'hilly', pace: 'recorded', track } });
    expect(named(recorded, 'Invented leg')).toMatchObject({
      value: 'track, recorded speeds, ground of hilly',
      source: 'invented.gpx',
    });
  });

  it.each([
    { wind: { as: 'along', headwindKmh: 12 }, words: '12 km/h against' },
    { wind: { as: 'along', headwindKmh: -8 }, words: '8 km/h from behind' },
    { wind: { as: 'around', windKmh: 20 }, words: '20 km/h from all sides' },
  ] as const)('names the wind: $words', ({ wind, words }) => {
    expect(ofTour({}, { wind }).map(({ value }) => value)).toContain(words);
  });

  it('says nothing of a calm', () => {
    expect(ofTour({}).filter(({ name }) => name === 'Invented leg')).toEqual([]);
  });
});

describe('hubAssumptions()', () => {
  const { rules } = demoScenarios[0]!;
  const linesOf = (items: readonly Item[]) =>
    carriedItems(
      demoScenarios.find(({ method }) => method === 'hub')!,
      items,
    );

  it('is empty without a hub or converter', () => expect(hubAssumptions([], rules, [])).toEqual([]));

  it('tells a rating from a curve, and where the curve was read', () => {
    expect(hubAssumptions(linesOf(demoItems), rules, [])[0]).toMatchObject({ basis: 'label' });
    const items = demoItems.map((item) =>
      item.kind === 'generator-hub'
        ? {
            ...item,
            power: {
              as: 'curve' as const,
              readAt: 'plug' as const,
              points: [
                { speedKmh: 10, powerW: 1 },
                { speedKmh: 20, powerW: 3 },
              ],
            },
          }
        : item,
    );
    expect(hubAssumptions(linesOf(items), rules, [])[0]?.basis).toBe('measured');
    expect(hubAssumptions(linesOf(items), rules, [])[0]?.value).toMatch(/2 points read at the USB plug/);
  });

  it('names load and capacitor of the converter', () => {
    const items = demoItems.map((item) =>
      item.kind === 'converter' ? { ...item, load: 'tracking' as const, seriesCapacitorUF: 220 } : item,
    );
    const [, converter] = hubAssumptions(linesOf(items), rules, []);
    expect(converter?.value).toMatch(/follows the best load, 220 µF in series/);
  });
});
