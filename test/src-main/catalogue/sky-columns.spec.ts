import { describe, expect, it } from 'vitest';
import { sky, usualSky, type SkySettings } from '../../../shared-types/settings.ts';
import { readSettings, saveSettings } from '../../../src-main/catalogue/settings.ts';
import { skyColumns, skyOf } from '../../../src-main/catalogue/sky-columns.ts';
import { demoSettings } from '../../../db/demo/demo.ts';
import { openedDemo } from './temporary-catalogue.ts';

const unusual: SkySettings = {
  method: 'transitions',
  persistence: 0.41,
  histories: 350,
  seed: 20_270_503,
  diffuse: 'isotropic',
  groundReflectance: 0.7,
};

describe('a row of settings that names no sky', () => {
  it('gets the usual one', () => {
    const { read, write } = openedDemo();
    write.exec(
      "DELETE FROM settings; INSERT INTO settings (id, currency, theme, step_min) VALUES (1, 'EUR', 'dark', 15)",
    );
    expect(readSettings(read)?.sky).toEqual(usualSky);
  });
});

describe('skyColumns()', () => {
  it('has a column for each field of the sky', () => {
    const values = Object.values(skyColumns(unusual));
    expect(values).toEqual(Object.keys(sky.shape).map((key) => unusual[key as keyof SkySettings]));
  });

  it('is undone by skyOf()', () => {
    expect(skyOf(skyColumns(unusual))).toEqual(unusual);
  });

  it('is stored beside settings that stay as they were', () => {
    const { read, write } = openedDemo();
    saveSettings(write, { ...demoSettings, sky: unusual });
    expect(readSettings(read)).toEqual({ ...demoSettings, sky: unusual });
  });
});
