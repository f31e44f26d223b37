import { describe, expect, it } from 'vitest';
import {
  insertRow,
  putRow,
  selectAll,
  selectOne,
  selectOwned,
} from '../../../src-main/catalogue/statements.ts';
import { inTransaction } from '../../../src-main/catalogue/connection.ts';
import { opened, openedDemo } from './temporary-catalogue.ts';

const charger = { item_id: 'demo-charger-30', kind: 'wall-charger', total_w: 45 };

describe('selectOwned()', () => {
  it('throws when the row another one promises is missing', () => {
    const { read } = opened();
    expect(() => selectOwned(read, 'SELECT * FROM banks WHERE item_id = ?', 'gone')).toThrow(
      /misses a row.*gone/,
    );
  });
});

describe('selectOne()', () => {
  it('is undefined when nothing matches', () => {
    expect(selectOne(opened().read, 'SELECT * FROM items WHERE id = ?', 'gone')).toBeUndefined();
  });
});

describe('insertRow()', () => {
  it('refuses a row that is there already', () => {
    const { write } = openedDemo();
    expect(() => insertRow(write, 'wall_chargers', charger)).toThrow(/UNIQUE/);
  });

  it('stores text as it is, quotes and all', () => {
    const { write } = openedDemo();
    const notes = `'); DROP TABLE items; --"`;
    insertRow(write, 'tours', {
      id: 'quoted',
      label: notes,
      start_date: '2027-05-03',
      rider_mass_kg: 70,
      bicycle_mass_kg: 30,
      rider_w: 100,
      notes,
    });
    expect(selectOne(write, 'SELECT label, notes FROM tours WHERE id = ?', 'quoted')).toEqual({
      label: notes,
      notes,
    });
  });
});

describe('putRow()', () => {
  it('replaces the row of that key in place', () => {
    const { write } = openedDemo();
    putRow(write, 'wall_chargers', 'item_id', charger);
    expect(selectAll(write, 'SELECT * FROM wall_chargers')).toEqual([charger]);
  });
});

describe('inTransaction()', () => {
  it('undoes the inner work alone when only that fails', () => {
    const { write } = openedDemo();
    inTransaction(write, () => {
      putRow(write, 'wall_chargers', 'item_id', charger);
      expect(() =>
        inTransaction(write, () => {
          write.exec('DELETE FROM wall_chargers');
          throw new Error('inner');
        }),
      ).toThrow('inner');
    });
    expect(selectAll(write, 'SELECT * FROM wall_chargers')).toEqual([charger]);
  });

  it('undoes all of it when the outer work fails', () => {
    const { write } = openedDemo();
    const work = (): void => {
      inTransaction(write, () => write.exec('DELETE FROM wall_chargers'));
      throw new Error('outer');
    };
    expect(() => inTransaction(write, work)).toThrow('outer');
    expect(selectAll(write, 'SELECT total_w FROM wall_chargers')).toEqual([{ total_w: 30 }]);
  });
});
