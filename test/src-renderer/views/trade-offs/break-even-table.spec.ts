import { describe, expect, it } from 'vitest';
import { toCsv } from '../../../../src-renderer/parts/charts/chart-table.ts';
import { breakEvenTable } from '../../../../src-renderer/views/trade-offs/break-even-table.ts';
import { mapCell, smallMap } from '../../../support/map-fixture.ts';

describe('the table of the break-even map', () => {
  it('has a row for each tour', () => {
    const { rows, columns } = breakEvenTable(smallMap());
    expect(rows).toHaveLength(4);
    expect(rows.every((row) => row.length === columns.length)).toBe(true);
    expect(rows[3]).toEqual([14, 5, 'Panel + buffer bank', 'yes', 50, 35.4, 'Banks only']);
  });

  it('leaves empty what is not known', () => {
    const cells = [
      mapCell(2, 1, null, { carrying: 'none', margin: null, leadPoints: null }),
      mapCell(2, 5, 'demo-panel', {
        carrying: 'none',
        leadPoints: null,
        margin: { value: -1, capped: false },
      }),
      mapCell(9, 1, 'demo-panel', { carrying: 'another' }),
    ];
    expect(
      toCsv(breakEvenTable(smallMap({ cells })))
        .split('\r\n')
        .slice(1, 4),
    ).toEqual([
      '2,1,none,by none,,,none',
      '2,5,Panel + buffer bank,by none,-100,,none',
      '9,1,Panel + buffer bank,only by another,50,10,none',
    ]);
  });
});
