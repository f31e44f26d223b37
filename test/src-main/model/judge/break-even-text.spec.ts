import { describe, expect, it } from 'vitest';
import { mapText } from '../../../../src-main/model/judge/break-even-text.ts';
import { mapCell } from '../../../support/map-fixture.ts';

const scenarios = [
  { id: 'one', letter: 'A', label: 'Banks only' },
  { id: 'two', letter: 'B', label: 'Panel' },
];

describe('a break-even map as text', () => {
  const grid = { days: [2, 30], gapsDays: [1, 14] };
  const text = mapText(
    grid,
    [
      mapCell(2, 1, 'one', { leadPoints: 9.4 }),
      mapCell(2, 14, 'two', { leadPoints: 30.6, carrying: 'another' }),
      mapCell(30, 1, 'two', { leadPoints: null }),
      mapCell(30, 14, 'one', { leadPoints: null, carrying: 'none' }),
    ],
    scenarios,
  );

  it('has a line of days between walls, and a line a length', () => {
    expect(text.split('\n').slice(1, 4)).toEqual([
      'days       1      14',
      '   2     A 9   B* 31',
      '  30       B     (A)',
    ]);
  });

  it('says what each letter stands for', () => {
    expect(text).toContain('\nA  Banks only\nB  Panel\n');
  });

  it('has a dash where limits leave none', () => {
    const none = mapText({ days: [2], gapsDays: [1] }, [mapCell(2, 1, null)], scenarios);
    expect(none.split('\n')[2]).toBe('   2       -');
  });
});
