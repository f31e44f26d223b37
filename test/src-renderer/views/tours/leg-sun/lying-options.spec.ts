import { describe, expect, it } from 'vitest';
import {
  lyingKey,
  lyingOptions,
  lyingWords,
} from '../../../../../src-renderer/views/tours/leg-sun/lying-options.ts';

// An id may be any word of small letters, also one of ours.
const scenarios = [
  { id: 'flat', label: 'Panel + buffer bank' },
  { id: 'two', label: 'Banks only' },
];

describe('lyingOptions()', () => {
  it('offers flat and aimed with no scenario at all', () => {
    expect(lyingOptions([]).map(({ words }) => words)).toEqual(['Flat all day', 'Aimed all day']);
  });

  it('never mistakes a scenario for a way to lie', () => {
    const keys = lyingOptions(scenarios).map(({ key }) => key);
    expect(new Set(keys).size).toBe(4);
    expect(lyingKey({ as: 'scenario', scenarioId: 'flat' })).not.toBe(lyingKey({ as: 'flat' }));
  });

  it('offers each scenario by its name', () => {
    const [, , first, second] = lyingOptions(scenarios);
    expect(first).toMatchObject({
      words: 'As in Panel + buffer bank',
      lying: { as: 'scenario', scenarioId: 'flat' },
    });
    expect(second?.words).toBe('As in Banks only');
  });
});

describe('lyingWords()', () => {
  it('says nothing of a scenario that is gone', () => {
    expect(lyingWords({ as: 'scenario', scenarioId: 'gone' }, lyingOptions(scenarios))).toBe('');
  });

  it('fits into a sentence', () => {
    const options = lyingOptions(scenarios);
    expect(lyingWords({ as: 'aimed' }, options)).toBe('aimed all day');
    expect(lyingWords({ as: 'scenario', scenarioId: 'two' }, options)).toBe('as in Banks only');
  });
});
