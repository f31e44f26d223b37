import { describe, expect, it } from 'vitest';
import { itemKinds } from '../../../../shared-types/item.ts';
import { tourDraft } from '../../../../shared-types/tour.ts';
import { fieldNameAt } from '../../../../src-renderer/parts/fields/field-name.ts';

const tourName = (path: string): string | null => fieldNameAt(tourDraft, path.split('.'));

describe('fieldNameAt()', () => {
  it('has no name for what is no field', () => {
    expect(tourName('spareWheel')).toBeNull();
    expect(tourName('label.0')).toBeNull();
  });

  it.each([
    ['startDate', 'Starts on'],
    ['legs', 'Legs'],
    ['legs.0', 'Legs'],
    ['legs.2.days', 'Days'],
    ['legs.0.place.latDeg', 'Latitude'],
    ['legs.0.dayStops', 'Stops on a day'],
    ['legs.0.dayStops.1.minutes', 'Length'],
  ])('names %s as its form does', (path, name) => {
    expect(tourName(path)).toBe(name);
  });

  it('looks into what may be left out', () => {
    const path = ['measuredDeliverableWh', 'on'];
    expect(fieldNameAt(itemKinds.bank, path)).toMatch(/^[A-Z]/);
  });
});
