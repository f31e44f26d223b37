import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../../db/demo/demo.ts';
import type { MoneySettings } from '../../../shared-types/money-settings.ts';
import { moneyColumns, moneyOf } from '../../../src-main/catalogue/money-columns.ts';
import { readSettings, saveSettings } from '../../../src-main/catalogue/settings.ts';
import { openedDemo } from './temporary-catalogue.ts';

const unusual: MoneySettings = {
  ratePct: 2.5,
  touringDaysAYear: 45,
  wallNight: { minor: 3000, currency: 'JPY' },
};

describe('moneyColumns()', () => {
  it('is undone by moneyOf()', () => expect(moneyOf(moneyColumns(unusual))).toEqual(unusual));

  it('is stored beside settings that stay as they were', () => {
    const { read, write } = openedDemo();
    saveSettings(write, { ...demoSettings, money: unusual });
    expect(readSettings(read)).toEqual({ ...demoSettings, money: unusual });
  });
});
