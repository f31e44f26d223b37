import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../../db/demo/demo.ts';
import { risk, usualRisk, type RiskSettings } from '../../../shared-types/settings.ts';
import { riskColumns, riskOf } from '../../../src-main/catalogue/risk-columns.ts';
import { readSettings, saveSettings } from '../../../src-main/catalogue/settings.ts';
import { openedDemo } from './temporary-catalogue.ts';

const unusual: RiskSettings = { confidence: 0.75, useSpread: 0.4 };

describe('a row of settings that names no risk', () => {
  it('gets the usual one', () => {
    const { read, write } = openedDemo();
    write.exec(
      "DELETE FROM settings; INSERT INTO settings (id, currency, theme, step_min) VALUES (1, 'EUR', 'dark', 15)",
    );
    expect(readSettings(read)?.risk).toEqual(usualRisk);
  });
});

describe('riskColumns()', () => {
  it('has a column for each field of the risk', () => {
    const values = Object.values(riskColumns(unusual));
    expect(values).toEqual(Object.keys(risk.shape).map((key) => unusual[key as keyof RiskSettings]));
  });

  it('is undone by riskOf()', () => {
    expect(riskOf(riskColumns(unusual))).toEqual(unusual);
  });

  it('is stored beside settings that stay as they were', () => {
    const { read, write } = openedDemo();
    saveSettings(write, { ...demoSettings, risk: unusual });
    expect(readSettings(read)).toEqual({ ...demoSettings, risk: unusual });
  });
});
