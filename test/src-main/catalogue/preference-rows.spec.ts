import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../../db/demo/demo.ts';
import { noLimits } from '../../../shared-types/limits.ts';
import { limitColumns } from '../../../src-main/catalogue/limit-columns.ts';
import { readPreferences, saveScales } from '../../../src-main/catalogue/preference-rows.ts';
import { openedDemo } from './temporary-catalogue.ts';

const { preferences } = demoSettings;

describe('saveScales()', () => {
  it('stores whether an extra counts, and keeps its scale while it does not', () => {
    const { read, write } = openedDemo();
    const changed = {
      ...preferences,
      risk: { ...preferences.risk, counted: true },
      minutesLost: { counted: false, weight: 0.7, satisfied: 5, unacceptable: 45 },
    };
    saveScales(write, changed);
    expect(readPreferences(read, limitColumns(noLimits))).toEqual(changed);
  });

  it('leaves the core without a choice', () => {
    const { read } = openedDemo();
    expect(readPreferences(read, limitColumns(noLimits)).cost).toEqual(preferences.cost);
  });
});
