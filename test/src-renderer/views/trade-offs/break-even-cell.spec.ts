import { describe, expect, it } from 'vitest';
import type { MapCell } from '../../../../shared-types/break-even.ts';
import {
  cellDepth,
  cellMark,
  cellSentence,
  cellTour,
  methodOf,
} from '../../../../src-renderer/views/trade-offs/break-even-cell.ts';
import { mapCell, smallMap } from '../../../support/map-fixture.ts';

const map = smallMap();
const plain = (text: string): string => text.replaceAll(/[\u00a0\u202f]/gu, ' ');
const said = (cell: MapCell): string => plain(cellSentence(map, cell, 'en-GB'));
const led = (changes: Partial<MapCell> = {}): MapCell =>
  mapCell(14, 5, 'demo-panel', { secondId: 'demo-banks', leadPoints: 35.44, ...changes });

const kinds: readonly {
  what: string;
  cell: MapCell;
  mark: string;
  sentence: string;
  method: string | null;
}[] = [
  {
    what: 'a leader that carries the plan',
    cell: led(),
    mark: 'B 35',
    sentence:
      '14 days with a wall every 5 days: Panel + buffer bank leads Banks only by 35.4 points of 100, with an energy margin of +50 %.',
    method: 'panel',
  },
  {
    what: 'a leader before one that is not accepted',
    cell: led({ leadPoints: null }),
    mark: 'B',
    sentence:
      '14 days with a wall every 5 days: Panel + buffer bank leads Banks only, which has a figure that you do not accept or that is not known, with an energy margin of +50 %.',
    method: 'panel',
  },
  {
    what: 'a leader that does not carry the plan',
    cell: led({ carrying: 'another', margin: { value: -0.05, capped: false } }),
    mark: 'B* 35',
    sentence:
      '14 days with a wall every 5 days: Panel + buffer bank leads Banks only by 35.4 points of 100, but does not carry the plan as another does: use must be cut by 5 %.',
    method: 'panel',
  },
  {
    what: 'the nearest where none carries the plan',
    cell: led({ carrying: 'none', secondId: null, leadPoints: null, margin: { value: -0.2, capped: false } }),
    mark: '(B)',
    sentence:
      '14 days with a wall every 5 days: no scenario carries the plan; Panel + buffer bank is nearest, but use must be cut by 20 %.',
    method: 'panel',
  },
  {
    what: 'a leader that is alone',
    cell: led({ secondId: null, leadPoints: null, margin: { value: 3, capped: true } }),
    mark: 'B',
    sentence:
      '14 days with a wall every 5 days: Panel + buffer bank leads, alone, with an energy margin of more than +300 %.',
    method: 'panel',
  },
  {
    what: 'no scenario within the limits',
    cell: mapCell(14, 5, null, { carrying: 'none', margin: null }),
    mark: '–',
    sentence: '14 days with a wall every 5 days: your limits leave no scenario.',
    method: null,
  },
];

describe('a cell of the break-even map', () => {
  it.each(kinds)('says $what', ({ cell, mark, sentence, method }) => {
    expect(plain(cellMark(map, cell, 'en-GB'))).toBe(mark);
    expect(said(cell)).toBe(sentence);
    expect(methodOf(map, cell)).toBe(method);
  });

  it.each([
    { days: 1, gapDays: 1, tour: '1 day with no wall on the way' },
    { days: 3, gapDays: 3, tour: '3 days with no wall on the way' },
    { days: 3, gapDays: 2, tour: '3 days with a wall every 2 days' },
    { days: 90, gapDays: 1, tour: '90 days with a wall every night' },
  ])('names its tour: $tour', ({ days, gapDays, tour }) =>
    expect(plain(cellTour({ days, gapDays }, 'en-GB'))).toBe(tour),
  );

  it('is the deeper the larger the lead, and deepest where no score parts the first two', () => {
    const depths = [0, 10, 40, 90, null].map((leadPoints) => cellDepth(led({ leadPoints })));
    expect(depths).toEqual(depths.toSorted((a, b) => a - b));
    expect(depths[0]).toBeLessThan(depths[1]!);
    expect(depths[2]).toBe(depths[4]);
  });

  it('is pale where none carries the plan', () =>
    expect(cellDepth(led({ carrying: 'none', leadPoints: null }))).toBe(cellDepth(led({ leadPoints: 0 }))));
});
