import { describe, expect, it } from 'vitest';
import { limits } from '../../../../shared-types/limits.ts';
import { limitFields } from '../../../../src-renderer/views/trade-offs/limit-fields.ts';

describe('limitFields()', () => {
  it('has a field for each limit, which may be left empty', () => {
    const fields = limitFields('EUR');
    expect(fields.map(({ key }) => key)).toEqual(Object.keys(limits.shape));
    expect(fields.map(({ shape }) => ('orNone' in shape ? shape.orNone : shape.as))).toEqual([
      ...[true, true, true, true],
      'flag',
    ]);
  });

  it('names the currency of the money, and no other unit twice', () => {
    const units = limitFields('JPY').map(({ shape }) => ('meta' in shape ? shape.meta.unit : null));
    expect(units).toEqual(['JPY', 'g', 'g', undefined, undefined]);
  });
});
