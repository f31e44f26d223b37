import { describe, expect, it } from 'vitest';
import type { Station } from '../../../../shared-types/climate.ts';
import type { Leg, Place } from '../../../../shared-types/tour.ts';
import { tourSun } from '../../../../src-main/model/flow/tour-sun.ts';
import { noonOf } from '../../../../src-main/model/sun/calendar.ts';
import { legNotes } from '../../../../src-main/workbench/assemble/leg-notes.ts';
import { settlePlace } from '../../../../src-main/workbench/assemble/place.ts';
import { coordinates, legFixture, stationFixture } from '../../../support/station-fixture.ts';

const days = { from: 0, to: 3 };

function notesOf(
  place: Place,
  stations: readonly Station[],
  changes: Partial<Leg> = {},
  ratio: number | null = 1.3,
): readonly string[] {
  const leg = legFixture({ place, ...changes });
  const settled = settlePlace(leg.place, leg.radiation, stations)!;
  const row = [0, 1, 2].map((day) => ({ climate: settled.climate, noonMs: noonOf('2027-06-10', day) }));
  return legNotes(leg, settled, tourSun(row, 24), days, ratio);
}

describe('legNotes()', () => {
  it('says nothing of a near station, a mild night and a high sun', () => {
    expect(notesOf(coordinates(45.1, 10), [stationFixture('Plain')])).toEqual([]);
  });

  it('warns of a station over 300 km away and of no nearer one', () => {
    const plain = [stationFixture('Plain')];
    // A degree of latitude is 111 km: 290 and 310 km.
    expect(notesOf(coordinates(45 + 290 / 111.2, 10), plain)).toEqual([]);
    expect(notesOf(coordinates(45 + 310 / 111.2, 10), plain)[0]).toMatch(
      /^The nearest climate station, Plain, is 310\s?km away/,
    );
  });

  it('warns of a station over 500 m higher or lower', () => {
    const plain = [stationFixture('Plain', { elevationM: 1000 })];
    expect(notesOf(coordinates(45, 10, 510), plain)).toEqual([]);
    expect(notesOf(coordinates(45, 10, 400), plain)[0]).toMatch(/^Plain lies 600\s?m higher than the leg/);
    expect(notesOf(coordinates(45, 10, 1600), plain)[0]).toMatch(/^Plain lies 600\s?m lower than the leg/);
  });

  it('says where temperatures come from when the station has none', () => {
    const none = new Array<null>(12).fill(null);
    const bare = stationFixture('Bare', { minDegC: none, maxDegC: none });
    const warm = stationFixture('Warm', { lonDeg: 12 });
    expect(notesOf({ as: 'station', station: 'Bare' }, [bare, warm]).join()).toMatch(
      /Bare has no temperatures: those of Warm, 157\s?km away, .* 6.5 K\/km/,
    );
  });

  it('says that own radiation above a cloudless sky is held', () => {
    const own = (kWhM2: number): Leg['radiation'] => ({
      as: 'own',
      kWhM2ADay: new Array<number>(12).fill(kWhM2),
    });
    const plain = [stationFixture('Plain')];
    expect(notesOf(coordinates(45, 10), plain, { radiation: own(6) })).toEqual([]);
    expect(notesOf(coordinates(45, 10), plain, { radiation: own(11) })[0]).toMatch(
      /held at 9.\d\skWh\/m² a day/,
    );
  });

  it('warns of a sun too low where aimed is over twice flat', () => {
    const plain = [stationFixture('Plain')];
    expect(notesOf(coordinates(45, 10), plain, {}, 2)).toEqual([]);
    expect(notesOf(coordinates(45, 10), plain, {}, 2.31)[0]).toMatch(/^Sun too low .* 2.3 times/);
    expect(notesOf(coordinates(45, 10), plain, {}, null)[0]).toMatch(/does not rise/);
  });

  it('warns of charging where nights freeze', () => {
    const cold = stationFixture('Cold', { minDegC: new Array<number>(12).fill(-4) });
    // A cosine from -4 to 18 degC is below 0 for a tenth of a turn on either side of its lowest: about 6 h.
    expect(notesOf(coordinates(45, 10), [cold])[0]).toMatch(
      /outside are below freezing for up to [67].h of a mean day, to −4.°C: never charge/,
    );
  });

  it('warns of charging where days are hot', () => {
    const hot = stationFixture('Hot', { maxDegC: new Array<number>(12).fill(44) });
    expect(notesOf(coordinates(45, 10), [hot])[0]).toMatch(/above 40.°C for up to \d+.h .* to 44.°C/);
  });
});
