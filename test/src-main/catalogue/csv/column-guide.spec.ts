import { describe, expect, it } from 'vitest';
import { columnGuide } from '../../../../src-main/catalogue/csv/column-guide.ts';
import { columnNames } from '../../../../src-main/catalogue/csv/columns.ts';

const guide = columnGuide('EUR');
const rowsOf = (name: string) => guide.filter((row) => row.name === name);

describe('columnGuide()', () => {
  it('says of every column what is allowed, what an empty cell means and an example', () => {
    expect([...new Set(guide.map(({ name }) => name))]).toEqual(columnNames);
    const silent = guide.filter((row) => row.allowed === '' || row.whenEmpty === '' || row.example === '');
    expect(silent).toEqual([]);
  });

  it('gives limits with their unit, apart where kinds differ', () => {
    expect(rowsOf('capacity_wh').map(({ kinds, allowed }) => [kinds, allowed])).toEqual([
      [['device'], 'a number from 0 to 250 Wh'],
      [['bank'], 'a number from 0 to 1,100 Wh'],
    ]);
    expect(rowsOf('mass_g')).toMatchObject([{ allowed: 'a number from 0 to 20,000 g' }]);
  });

  it('says how outlets, readings and amounts are written', () => {
    expect(rowsOf('outputs')[0]?.allowed).toMatch(/^each outlet as standard:W .*one of: usb-2.* 240 W$/);
    expect(rowsOf('power_curve')[0]?.allowed).toMatch(/^each reading as km\/h:W .*120 km\/h/);
    expect(rowsOf('price')[0]?.allowed).toBe(
      'an amount from 0 to 1,000,000 EUR, or with its own code: 120 USD',
    );
  });

  it('says what an empty cell stands for', () => {
    const whenEmpty = (name: string) => rowsOf(name).map((row) => row.whenEmpty);
    expect(whenEmpty('label')).toEqual(['must be filled']);
    expect(whenEmpty('health')).toEqual(['0.9', '1']);
    expect(whenEmpty('price')).toEqual(['0; must be filled if considering']);
    expect(whenEmpty('rated_circumference_m')).toEqual(['as wheel_circumference_m']);
  });
});
