import { join } from 'node:path';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { setupUserData } from '../../../../src-main/hosts/electron/user-data.ts';
import { app, resetElectron } from '../../../support/electron-double.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

describe('the files of Chromium', () => {
  beforeEach(resetElectron);

  it('lie in a folder of their own beside the catalogue', () => {
    setupUserData('/data/chargewright');
    expect(app.paths.get('userData')).toBe(join('/data/chargewright', 'window'));
  });
});
