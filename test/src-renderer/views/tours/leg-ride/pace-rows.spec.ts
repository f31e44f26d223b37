import { describe, expect, it } from 'vitest';
import { paceRows } from '../../../../../src-renderer/views/tours/leg-ride/pace-rows.ts';
import { legHub, legRide, pace } from '../../../support/fake-leg-ride.ts';

describe('paceRows()', () => {
  it('draws no bar at all where nothing is later', () => {
    const rows = paceRows(legRide({ loaded: pace(0), off: null, on: null }));
    expect(rows.map(({ share }) => share)).toEqual([0, 0]);
  });

  it('draws no bar for a day done sooner', () => {
    expect(paceRows(legRide({ loaded: pace(-3) })).map(({ share }) => share)).toEqual([0, 0, 0.4, 1]);
  });

  it('has one row for a hub that nothing takes power from', () => {
    const rows = paceRows(legRide({ hub: legHub({ converter: null }), off: pace(4), on: pace(4) }));
    expect(rows.map(({ name, pace: { laterMinADay } }) => [name, laterMinADay])).toEqual([
      ['Without the kit', 0],
      ['With its grams', 2],
      ['Whole kit, hub turning', 4],
    ]);
  });

  it('leaves the hub out where there is none', () => {
    const rows = paceRows(legRide({ hub: null, off: null, on: null }));
    expect(rows.map(({ name }) => name)).toEqual(['Without the kit', 'With its grams']);
  });

  it('goes from the lightest way to the one that charges', () => {
    const rows = paceRows(legRide());
    expect(rows.map(({ name }) => name)).toEqual([
      'Without the kit',
      'With its grams',
      'Whole kit, hub switched off',
      'Whole kit, hub charging',
    ]);
    expect(rows.map(({ pace }) => pace.laterMinADay)).toEqual([0, 2, 4, 10]);
    expect(rows.map(({ share }) => share)).toEqual([0, 0.2, 0.4, 1]);
  });
});
