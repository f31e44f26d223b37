import { describe, expect, it } from 'vitest';
import { legNotes } from '../../../../src-renderer/views/sheet/leg-notes.ts';

const far = 'The nearest climate station is far.';
const low = 'The sun is low.';

describe('legNotes()', () => {
  it('has nothing to say of legs without notes', () => {
    expect(legNotes([])).toEqual([]);
    expect(legNotes([{ leg: 'Coast', notes: [] }])).toEqual([]);
  });

  it('says the same note once, of all its legs', () => {
    const legs = [
      { leg: 'Coast', notes: [far] },
      { leg: 'Hills', notes: [] },
      { leg: 'Plateau', notes: [low, far] },
    ];
    expect(legNotes(legs)).toEqual([`Coast, Plateau: ${far}`, `Plateau: ${low}`]);
  });

  it('names legs of the same name once', () => {
    const legs = [
      { leg: 'Coast', notes: [far] },
      { leg: 'Coast', notes: [far] },
    ];
    expect(legNotes(legs)).toEqual([`Coast: ${far}`]);
  });
});
