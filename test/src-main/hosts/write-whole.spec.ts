import { chmodSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeWhole } from '../../../src-main/hosts/write-whole.ts';
import { temporaryFolder } from './temporary-folder.ts';

const bytes = new TextEncoder().encode('new');

describe('writing a file whole', () => {
  it('names the reason when the folder has gone', async () => {
    const target = join(temporaryFolder(), 'gone', 'sheet.csv');
    await expect(writeWhole(target, bytes)).rejects.toMatchObject({
      code: 'storage',
      message:
        'sheet.csv was not saved: the folder or file is no longer there. Nothing was changed; choose another place.',
    });
  });

  it('names the reason when a file stands for the folder', async () => {
    const folder = temporaryFolder({ file: '' });
    await expect(writeWhole(join(folder, 'file', 'sheet.csv'), bytes)).rejects.toMatchObject({
      message: expect.stringContaining('its folder is not a folder') as string,
    });
  });

  it('leaves nothing beside a target it could not replace', async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'sheet.csv'));
    await expect(writeWhole(join(folder, 'sheet.csv'), bytes)).rejects.toMatchObject({ code: 'storage' });
    expect(readdirSync(folder)).toEqual(['sheet.csv']);
  });

  it.skipIf(process.getuid?.() === 0 || process.platform === 'win32')(
    'keeps the former file where writing is forbidden (left out as root: root may write anywhere)',
    async () => {
      const folder = temporaryFolder({ 'sheet.csv': 'former' });
      chmodSync(folder, 0o500);
      await expect(writeWhole(join(folder, 'sheet.csv'), bytes)).rejects.toMatchObject({ code: 'storage' });
      chmodSync(folder, 0o700);
      expect(readFileSync(join(folder, 'sheet.csv'), 'utf8')).toBe('former');
    },
  );

  it('replaces the former file and leaves only the new one', async () => {
    const folder = temporaryFolder({ 'sheet.csv': 'former, and longer' });
    await writeWhole(join(folder, 'sheet.csv'), bytes);
    expect(readFileSync(join(folder, 'sheet.csv'), 'utf8')).toBe('new');
    expect(readdirSync(folder)).toEqual(['sheet.csv']);
  });
});
