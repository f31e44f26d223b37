import { describe, expect, it } from 'vitest';
import { demoSettings } from '../../../db/demo/demo.ts';
import { usualFrontLoad, type FrontLoad } from '../../../shared-types/front-load.ts';
import { frontLoadOf, loadColumns } from '../../../src-main/catalogue/load-columns.ts';
import { readSettings, saveSettings } from '../../../src-main/catalogue/settings.ts';
import { openedDemo } from './temporary-catalogue.ts';

// Every figure another, so that no two columns can be mistaken for each other.
const unusual: FrontLoad = {
  wheelbaseM: 1.12,
  ahead: { fork: 1.01, handlebar: 0.91, frame: 0.61, rearRack: -0.11, body: 0.41 },
  ownShare: { fork: 0.95, handlebar: null, frame: 0.52, rearRack: -0.02, body: 0 },
};

describe('a row of settings that names no load', () => {
  it('gets the usual one', () => {
    const { read, write } = openedDemo();
    write.exec(
      "DELETE FROM settings; INSERT INTO settings (id, currency, theme, step_min) VALUES (1, 'EUR', 'dark', 15)",
    );
    expect(readSettings(read)?.frontLoad).toEqual(usualFrontLoad);
  });
});

describe('loadColumns()', () => {
  it('is undone by frontLoadOf()', () => expect(frontLoadOf(loadColumns(unusual))).toEqual(unusual));

  it('is stored beside settings that stay as they were', () => {
    const { read, write } = openedDemo();
    saveSettings(write, { ...demoSettings, frontLoad: unusual });
    expect(readSettings(read)).toEqual({ ...demoSettings, frontLoad: unusual });
  });
});
