import { describe, expect, it } from 'vitest';
import { legName } from '../../../../src-renderer/views/tours/leg-name.ts';

describe('legName()', () => {
  it('counts a leg that has no label', () => {
    expect([legName({ label: ' ' }, 1), legName({ label: 'Steppe' }, 1)]).toEqual(['leg 2', 'Steppe']);
  });
});
