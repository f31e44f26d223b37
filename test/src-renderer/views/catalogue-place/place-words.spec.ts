import { describe, expect, it } from 'vitest';
import { holdsWords, newestSound } from '../../../../src-renderer/views/catalogue-place/place-words.ts';
import { brokenBackup, soundBackup } from '../../support/fake-place.ts';

describe('holdsWords()', () => {
  it('counts what there is, and what there is not', () => {
    expect(holdsWords({ items: 1, tours: 1, scenarios: 0, readings: 1200 })).toBe(
      '1 item, 1 tour, 0 scenarios, 1,200 readings',
    );
  });
});

describe('newestSound()', () => {
  it('passes over a newer backup that is damaged', () => {
    expect(newestSound([brokenBackup, soundBackup])).toBe(soundBackup);
    expect(newestSound([brokenBackup])).toBeUndefined();
  });
});
