import { describe, expect, it } from 'vitest';
import { itemKinds, type ItemKind } from '../../../../shared-types/item.ts';
import { usualLifeYears } from '../../../../shared-types/usual-life.ts';
import { lifeFields } from '../../../../src-renderer/views/inventory/life-fields.ts';

describe('lifeFields()', () => {
  it.each(Object.keys(itemKinds) as ItemKind[])(
    'asks of a %s years and resale, both as a rider likes',
    (kind) => {
      const fields = lifeFields(kind);
      expect(fields.map(({ key }) => key)).toEqual(['lifeYears', 'resale']);
      for (const { shape } of fields) expect(shape).toMatchObject({ orNone: true });
    },
  );

  it('says what is usual for the kind', () => {
    const [years] = lifeFields('panel');
    const hint = years !== undefined && 'meta' in years.shape ? years.shape.meta.hint : undefined;
    expect(hint).toContain(`Left empty: ${usualLifeYears.panel}`);
  });
});
