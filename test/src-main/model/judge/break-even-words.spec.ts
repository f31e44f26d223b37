import { describe, expect, it } from 'vitest';
import type { MapCell } from '../../../../shared-types/break-even.ts';
import { mapBorders, mapFinding } from '../../../../src-main/model/judge/break-even-words.ts';
import { mapCell } from '../../../support/map-fixture.ts';

const days = [2, 7, 30];
const gapsDays = [1, 3, 7];
const names: Readonly<Record<string, string>> = { A: 'Banks', B: 'Panel', C: 'Hub' };
const nameOf = (id: string): string => names[id]!;

/** A line of letters for each length; `-` for a tour that none carries, the panel nearest, `x` for one with no scenario. */
function drawn(...rows: readonly string[]): readonly MapCell[] {
  return rows.flatMap((row, line) =>
    Array.from(row, (letter, column) => {
      const [length, gap] = [days[line]!, gapsDays[column]!];
      if (letter === '-') return mapCell(length, gap, 'B', { carrying: 'none' });
      return mapCell(length, gap, letter === 'x' ? null : letter, letter === 'x' ? { carrying: 'none' } : {});
    }),
  );
}

describe('what a break-even map shows', () => {
  it.each([
    {
      when: 'none carries the plan anywhere',
      rows: ['---', '---', '---'],
      says: 'No scenario carries the plan on any tour of this map',
    },
    {
      when: 'limits leave no scenario',
      rows: ['xxx', 'xxx', 'xxx'],
      says: 'No scenario carries the plan on any tour of this map',
    },
    {
      when: 'one leads everywhere',
      rows: ['BBB', 'BBB', 'BBB'],
      says: 'Panel leads on every tour of this map',
    },
    {
      when: 'one leads all that is carried',
      rows: ['BBB', 'BB-', 'B--'],
      says: 'Panel leads wherever one carries the plan',
    },
    {
      when: 'length alone decides',
      rows: ['AAA', 'AAA', 'BBB'],
      says: 'Banks leads up to 7 days; beyond that Panel leads',
    },
    {
      when: 'walls alone decide',
      rows: ['AAB', 'AAB', 'AAB'],
      says: 'Banks leads with a wall at least every 3 days; beyond that Panel leads',
    },
    {
      when: 'both decide',
      rows: ['AAA', 'ABB', 'ABB'],
      says: 'Banks leads up to 2 days, and on longer tours with a wall every night; beyond that Panel leads',
    },
    {
      when: 'the rest is shared',
      rows: ['AAA', 'ABC', 'ABB'],
      says: 'Banks leads up to 2 days, and on longer tours with a wall every night; beyond that Panel mostly leads',
    },
    {
      when: 'not all beyond is carried',
      rows: ['AAA', 'ABB', 'AB-'],
      says: 'Banks leads up to 2 days, and on longer tours with a wall every night; beyond that Panel leads where one carries the plan',
    },
    {
      when: 'the border slants',
      rows: ['AAA', 'AAB', 'ABB'],
      says: 'Banks leads up to 2 days, and on longer tours with a wall every night; beyond that Panel mostly leads',
    },
    {
      when: 'there is no border to speak of',
      rows: ['ABA', 'BAB', 'ABC'],
      says: 'Banks leads on 4, Panel leads on 4, Hub leads on 1 of 9 tours',
    },
    {
      when: 'beyond its borders the first leads too',
      rows: ['AAA', 'A--', 'B--'],
      says: 'Banks leads on 4, Panel leads on 1 of 9 tours',
    },
    {
      when: 'the first tour is not carried',
      rows: ['-AA', '-AA', '--B'],
      says: 'Banks leads on 4, Panel leads on 1 of 9 tours',
    },
  ])('is said when $when', ({ rows, says }) => expect(mapFinding(drawn(...rows), nameOf)).toBe(says));
});

describe('the borders of a break-even map', () => {
  it('are a sentence for gaps that are alike', () => {
    expect(mapBorders({ days, gapsDays }, drawn('AAA', 'AAA', 'AAA'), nameOf)).toEqual([
      'With a wall at least every 7 days: Banks at any length.',
    ]);
    expect(mapBorders({ days, gapsDays }, drawn('AAA', 'ABB', 'ABB'), nameOf)).toEqual([
      'With a wall every night: Banks at any length.',
      'With a wall every 3 to 7 days: Banks up to 2 days, then Panel.',
    ]);
  });

  it('say each change of leader, and where none carries the plan', () => {
    expect(mapBorders({ days, gapsDays }, drawn('AAA', 'ABB', 'AC-'), nameOf)).toEqual([
      'With a wall every night: Banks at any length.',
      'With a wall every 3 days: Banks up to 2 days, then Panel up to 7 days, then Hub.',
      'With a wall every 7 days: Banks up to 2 days, then Panel up to 7 days, then none carries the plan (nearest Panel).',
    ]);
  });

  it('say where limits leave none', () => {
    expect(mapBorders({ days, gapsDays }, drawn('AAA', 'AAA', 'xxx'), nameOf)).toEqual([
      'With a wall at least every 7 days: Banks up to 7 days, then none within your limits.',
    ]);
  });
});
