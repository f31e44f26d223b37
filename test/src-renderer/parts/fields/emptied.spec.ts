import { describe, expect, it } from 'vitest';
import { isEmptied } from '../../../../src-renderer/parts/fields/emptied.ts';

describe('isEmptied()', () => {
  it('tells nothing from what is no number, which a number input shows as no value too', () => {
    expect(isEmptied({ value: '', validity: { badInput: true } })).toBe(false);
    expect(isEmptied({ value: '', validity: { badInput: false } })).toBe(true);
  });

  it('takes 0 for a figure', () => {
    expect(isEmptied({ value: '0', validity: { badInput: false } })).toBe(false);
  });
});
