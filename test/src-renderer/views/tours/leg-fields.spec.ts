import { describe, expect, it } from 'vitest';
import {
  bicycleFields,
  coordinateFields,
  legFields,
  legStops,
  outletFields,
  terrainClassFields,
  tourFields,
  tourNotes,
  windFields,
} from '../../../../src-renderer/views/tours/leg-fields.ts';

const keys = (fields: typeof legFields): string[] => fields.map(({ key }) => key);

describe('fields of a tour', () => {
  // A field renamed in the contract would otherwise vanish from the screen without a word.
  it('finds every field the screens draw one by one', () => {
    expect(keys(tourFields)).toEqual(['label', 'startDate', 'riderMassKg', 'bicycleMassKg', 'riderW']);
    expect(keys(bicycleFields)).toEqual(['bicycle']);
    expect(keys(windFields)).toEqual(['wind']);
    expect(keys(tourNotes)).toEqual(['notes']);
    expect(keys(legFields)).toEqual(['label', 'days', 'ridingHours']);
    expect(keys(legStops)).toEqual(['dayStops']);
  });

  it('reaches into place, terrain and nights', () => {
    expect(keys(coordinateFields)).toEqual(['latDeg', 'lonDeg', 'elevationM']);
    expect(keys(terrainClassFields)).toEqual(['terrainClass']);
    expect(keys(outletFields)).toEqual(['wallOutlets', 'postOutlets']);
  });
});
