import { describe, expect, it } from 'vitest';
import { paceFields, startingPace } from '../../../../src-renderer/views/tours/terrain-fields.ts';

describe('startingPace()', () => {
  it.each([
    [0, 'computed'],
    [0.5, 'computed'],
    [0.51, 'recorded'],
    [1, 'recorded'],
  ])('with speeds on %s of the distance rides it %s', (timedShare, pace) => {
    expect(startingPace({ timedShare })).toBe(pace);
  });
});

describe('paceFields', () => {
  it('offers the choice of the schema', () => {
    const choices = paceFields.map(({ key, shape }) => [
      key,
      'meta' in shape && Object.keys(shape.meta.choices ?? {}),
    ]);
    expect(choices).toEqual([['pace', ['recorded', 'computed']]]);
  });
});
