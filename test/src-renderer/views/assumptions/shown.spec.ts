import { describe, expect, it } from 'vitest';
import type { UsedAssumption } from '../../../../shared-types/all-assumptions.ts';
import { assumptionsTable, shownAssumptions } from '../../../../src-renderer/views/assumptions/shown.ts';

const each = (name: string, basis: UsedAssumption['basis'], usedBy: readonly string[] | null = null) => ({
  ...{ name, basis, usedBy },
  value: `value of ${name}`,
  source: 'a handbook',
});
const all = [
  each('Weather', 'default'),
  each('Phone', 'label'),
  each('Bank', 'measured', ['Banks only', 'Hub']),
];
const names = (basis: UsedAssumption['basis'] | 'all', search = '') =>
  shownAssumptions(all, { basis, search }).map(({ name }) => name);

describe('the assumptions shown', () => {
  it('are those of a basis, in which every word of the search stands somewhere', () => {
    expect(names('all')).toEqual(['Weather', 'Phone', 'Bank']);
    expect(names('measured')).toEqual(['Bank']);
    expect(names('all', 'HANDBOOK pho')).toEqual(['Phone']);
    expect(names('all', 'hub')).toEqual(['Bank']);
    expect(names('label', 'weather')).toEqual([]);
  });

  it('say what they are from, and which scenarios rest on them', () => {
    expect(assumptionsTable(all).rows.map(([name, , basis, , used]) => [name, basis, used])).toEqual([
      ['Weather', 'Usual value', 'All'],
      ['Phone', 'Label', 'All'],
      ['Bank', 'Measured', 'Banks only, Hub'],
    ]);
  });
});
