import { describe, expect, it } from 'vitest';
import { allLegNotes } from '../../shared-types/all-leg-notes.ts';

const far = 'The nearest climate station is far.';
const low = 'The sun is low.';

describe('allLegNotes()', () => {
  it('has nothing to say of legs without notes', () => {
    expect(allLegNotes([])).toEqual([]);
    expect(allLegNotes([{ leg: 'Coast', notes: [] }])).toEqual([]);
  });

  it('says the same note once, of all its legs', () => {
    const legs = [
      { leg: 'Coast', notes: [far] },
      { leg: 'Hills', notes: [] },
      { leg: 'Plateau', notes: [low, far] },
    ];
    expect(allLegNotes(legs)).toEqual([`Coast, Plateau: ${far}`, `Plateau: ${low}`]);
  });

  it('names legs of the same name once', () => {
    const legs = [
      { leg: 'Coast', notes: [far] },
      { leg: 'Coast', notes: [far] },
    ];
    expect(allLegNotes(legs)).toEqual([`Coast: ${far}`]);
  });
});
