import { describe, expect, it } from 'vitest';
import { demoTours } from '../../../db/demo/demo.ts';
import { mostNights, type NightKind, type Nights } from '../../../shared-types/tour.ts';
import { nightColumns, readNights, writeNightKinds } from '../../../src-main/catalogue/leg-nights.ts';
import { findTour, saveTour } from '../../../src-main/catalogue/tours.ts';
import { openedDemo } from './temporary-catalogue.ts';

const { id: demoId, ...draft } = demoTours[0]!;

const aYear: Nights = {
  by: 'list',
  kinds: Array.from({ length: mostNights }, (_, night): NightKind => (night % 9 === 0 ? 'wall' : 'none')),
  wallOutlets: 3,
  postOutlets: 2,
};

describe('writeNightKinds()', () => {
  it('refuses a night more than the longest tour has', () => {
    const { write } = openedDemo();
    write.exec('DELETE FROM leg_nights WHERE leg_position = 0');
    const tooMany: NightKind[] = [...aYear.kinds, 'wall'];
    expect(() => writeNightKinds(write, demoId, 0, tooMany)).toThrow(/CHECK constraint/);
  });

  it('refuses the nights of no leg', () => {
    expect(() => writeNightKinds(openedDemo().write, demoId, 50, ['wall'])).toThrow(/FOREIGN KEY/);
  });
});

describe('readNights()', () => {
  it('keeps the order of the nights and whether they are a list', () => {
    const { read, write } = openedDemo();
    write.exec('DELETE FROM leg_nights WHERE leg_position = 0');
    writeNightKinds(write, demoId, 0, aYear.kinds);
    expect(readNights(read, demoId, 0, nightColumns(aYear))).toEqual(aYear);
  });

  it('has a list of a whole year as it was saved with its leg', () => {
    const { read, write } = openedDemo();
    const legs = [{ ...draft.legs[0]!, days: mostNights, nights: aYear }];
    saveTour(write, { ...draft, legs }, demoId);
    expect(findTour(read, demoId)?.legs).toEqual(legs);
  });
});
