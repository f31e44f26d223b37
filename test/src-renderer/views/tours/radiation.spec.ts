import { describe, expect, it } from 'vitest';
import { radiation, type Radiation } from '../../../../shared-types/tour.ts';
import { monthFields, radiationAs, radiationUnit } from '../../../../src-renderer/views/tours/radiation.ts';

const own: Radiation = { as: 'own', kWhM2ADay: [1, 2, 3, 4, 5, 6, 7, 6, 5, 4, 3, 2] };

describe('radiationAs()', () => {
  it('starts with figures that the contract takes', () => {
    const started = radiationAs('own', undefined);
    expect(radiation.safeParse(started).success).toBe(true);
    expect(started.as === 'own' ? new Set(started.kWhM2ADay) : null).toEqual(new Set([4]));
  });

  it('never takes what was typed the other way', () => {
    expect(radiationAs('sunshine', own)).toEqual({ as: 'sunshine' });
    expect(radiationAs('own', { as: 'sunshine' }).as).toBe('own');
  });

  it('gives back what was typed before', () => {
    expect(radiationAs('own', own)).toBe(own);
  });
});

describe('monthFields', () => {
  it('has a field for each month, January first', () => {
    expect(monthFields.map(({ label }) => label)).toEqual([
      ...['January', 'February', 'March', 'April', 'May', 'June'],
      ...['July', 'August', 'September', 'October', 'November', 'December'],
    ]);
  });

  it('keeps the limits and says the unit once', () => {
    for (const field of monthFields) {
      expect(field).toMatchObject({ min: 0, max: 13.5 });
      expect(field).not.toHaveProperty('unit');
    }
    expect(radiationUnit).toBe('kWh/m² a day');
  });
});
