import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { dataFolder, ownDataFolder } from '../../../src-main/hosts/data-folder.ts';

const home = '/home/rider';

describe('the data folder', () => {
  it('ignores a relative XDG_DATA_HOME as that standard asks', () => {
    const environment = { XDG_DATA_HOME: 'data' };
    expect(dataFolder({ platform: 'linux', environment, home })).toBe(
      '/home/rider/.local/share/chargewright',
    );
  });

  it('takes an empty CHARGEWRIGHT_DATA for none', () => {
    const environment = { CHARGEWRIGHT_DATA: '' };
    expect(dataFolder({ platform: 'linux', environment, home })).toBe(
      '/home/rider/.local/share/chargewright',
    );
  });

  it('is the folder named by CHARGEWRIGHT_DATA on every platform', () => {
    const environment = { CHARGEWRIGHT_DATA: 'tour-data', XDG_DATA_HOME: '/data', APPDATA: 'C:\\Data' };
    for (const platform of ['linux', 'darwin', 'win32'] as const) {
      expect(dataFolder({ platform, environment, home })).toBe(resolve('tour-data'));
    }
  });

  it('lies under XDG_DATA_HOME on Linux', () => {
    const environment = { XDG_DATA_HOME: '/data' };
    expect(dataFolder({ platform: 'linux', environment, home })).toBe('/data/chargewright');
  });

  it('lies under Application Support on macOS', () => {
    const folder = dataFolder({ platform: 'darwin', environment: {}, home: '/Users/rider' });
    expect(folder).toBe('/Users/rider/Library/Application Support/chargewright');
  });

  it('lies under APPDATA on Windows, or its usual place', () => {
    const at = (environment: NodeJS.ProcessEnv) =>
      dataFolder({ platform: 'win32', environment, home: 'C:\\Users\\rider' });
    expect(at({ APPDATA: 'D:\\Roaming' })).toBe('D:\\Roaming\\chargewright');
    expect(at({})).toBe('C:\\Users\\rider\\AppData\\Roaming\\chargewright');
  });

  it('of this process follows its environment at each asking', () => {
    const before = process.env['CHARGEWRIGHT_DATA'];
    process.env['CHARGEWRIGHT_DATA'] = '/elsewhere';
    try {
      expect(ownDataFolder()).toBe(resolve('/elsewhere'));
    } finally {
      if (before === undefined) delete process.env['CHARGEWRIGHT_DATA'];
      else process.env['CHARGEWRIGHT_DATA'] = before;
    }
  });
});
