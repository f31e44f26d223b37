import { describe, expect, it } from 'vitest';
import { noMembers, withMembers } from '../../../src-renderer/state/with-members.ts';

describe('withMembers()', () => {
  it('puts members in and takes them out, and leaves the set it was given', () => {
    const two = withMembers<string>(noMembers, ['a', 'b'], true);
    expect([...withMembers(two, ['a', 'gone'], false)]).toEqual(['b']);
    expect([two.size, noMembers.size]).toEqual([2, 0]);
  });
});
