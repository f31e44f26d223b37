import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../../db/demo/demo.ts';
import { limits, noLimits, type Limits } from '../../../shared-types/limits.ts';
import { limitColumns, limitsOf } from '../../../src-main/catalogue/limit-columns.ts';
import { readSettings, saveSettings } from '../../../src-main/catalogue/settings.ts';
import { openedDemo } from './temporary-catalogue.ts';

const unusual: Limits = { toBuy: 250, grams: null, frontWheelGrams: 0, margin: -0.1, byAir: true };

describe('a row of settings that names no limit', () => {
  it('has none', () => {
    const { read, write } = openedDemo();
    write.exec(
      "DELETE FROM settings; INSERT INTO settings (id, currency, theme, step_min) VALUES (1, 'EUR', 'dark', 15)",
    );
    expect(readSettings(read)?.preferences.limits).toEqual(noLimits);
  });
});

describe('limitColumns()', () => {
  it('has a column for each limit', () => {
    expect(Object.keys(limitColumns(unusual))).toHaveLength(Object.keys(limits.shape).length);
  });

  it('is undone by limitsOf()', () => {
    for (const each of [unusual, noLimits]) expect(limitsOf(limitColumns(each))).toEqual(each);
  });

  it('tells a limit of nothing from none', () => {
    const { read, write } = openedDemo();
    const preferences = { ...demoSettings.preferences, limits: unusual };
    saveSettings(write, { ...demoSettings, preferences });
    expect(readSettings(read)).toEqual({ ...demoSettings, preferences });
  });
});
