import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { dialogDesk } from '../../../../src-main/hosts/electron/file-desk.ts';
import { createWindow } from '../../../../src-main/hosts/electron/window.ts';
import { app, dialog, resetElectron } from '../../../support/electron-double.ts';
import { temporaryFolder } from '../temporary-folder.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

const sheet = {
  fileName: 'comparison.csv',
  mediaType: 'text/csv',
  bytes: new TextEncoder().encode('Scenario,Margin\r\n'),
};

function desk() {
  return dialogDesk(createWindow('preload.cjs'));
}

describe('saving through a dialog', () => {
  beforeEach(resetElectron);

  it('rejects with a code the workbench can pass on', async () => {
    dialog.savePath = join(temporaryFolder(), 'gone', 'comparison.csv');
    await expect(desk().save(sheet)).rejects.toMatchObject({ code: 'storage' });
  });

  it('writes nothing when the dialog is closed', async () => {
    expect(await desk().save(sheet)).toEqual({ as: 'cancelled' });
  });

  it('keeps a suggested name inside the documents folder', async () => {
    app.setPath('documents', '/home/rider/Documents');
    await desk().save({ ...sheet, fileName: '../../comparison.csv' });
    expect(dialog.asked).toEqual([
      {
        defaultPath: join('/home/rider/Documents', 'comparison.csv'),
        filters: [{ name: 'CSV', extensions: ['csv'] }],
      },
    ]);
  });

  it('writes where the rider said and names the place', async () => {
    const path = join(temporaryFolder(), 'tour.csv');
    dialog.savePath = path;
    expect(await desk().save(sheet)).toEqual({ as: 'saved', path });
    expect(readFileSync(path, 'utf8')).toBe('Scenario,Margin\r\n');
  });
});

describe('choosing through a dialog', () => {
  beforeEach(resetElectron);

  it('rejects with a code when the file can not be read', async () => {
    dialog.openPath = join(temporaryFolder(), 'gone.csv');
    await expect(desk().choose('inventory-csv')).rejects.toMatchObject({ code: 'unreadable' });
  });

  it('answers a closed dialog as cancelled', async () => {
    expect(await desk().choose('inventory-csv')).toEqual({ as: 'cancelled' });
  });

  it('reads the chosen file and leaves out its folder', async () => {
    dialog.openPath = join(temporaryFolder({ 'kit.csv': 'kind,label' }), 'kit.csv');
    expect(await desk().choose('inventory-csv')).toEqual({
      as: 'chosen',
      name: 'kit.csv',
      text: 'kind,label',
    });
  });

  it('offers the kind of file that is asked for', async () => {
    await desk().choose('inventory-csv');
    await desk().choose('catalogue-json');
    expect(dialog.asked.map(({ filters }) => filters[0]?.extensions)).toEqual([['csv', 'txt'], ['json']]);
  });
});
