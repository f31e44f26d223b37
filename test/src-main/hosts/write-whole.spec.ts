import { chmodSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { open, type FileHandle } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { writeWhole } from '../../../src-main/hosts/write-whole.ts';
import { temporaryFolder } from './temporary-folder.ts';

const bytes = new TextEncoder().encode('new');

/** Root may write anywhere: does the work as the user `nobody` then, as everybody else does it. */
async function asAnyone(work: () => Promise<void>): Promise<void> {
  if (process.geteuid?.() !== 0) return work();
  process.seteuid?.('nobody');
  try {
    await work();
  } finally {
    process.seteuid?.(0);
  }
}

/** The next write puts half of its bytes on the disk and then fails. */
async function failHalfWay(code: string): Promise<() => boolean> {
  const handle = await open(join(temporaryFolder(), 'any'), 'w');
  await handle.close();
  let halfWritten = false;
  const failing = vi
    .spyOn(Object.getPrototypeOf(handle) as FileHandle, 'writeFile')
    .mockImplementationOnce(async function (this: FileHandle) {
      await this.write(bytes.subarray(0, 1));
      halfWritten = true;
      throw Object.assign(new Error(code), { code });
    });
  onTestFinished(() => failing.mockRestore());
  return () => halfWritten;
}

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

  it.skipIf(process.platform === 'win32')(
    'keeps the former file where writing is forbidden, and leaves nothing beside it',
    async () => {
      const folder = temporaryFolder({ 'sheet.csv': 'former' });
      chmodSync(folder, 0o555);
      await asAnyone(async () => {
        await expect(writeWhole(join(folder, 'sheet.csv'), bytes)).rejects.toMatchObject({
          code: 'storage',
          message: expect.stringContaining('it may not be written or read by you') as string,
        });
      });
      chmodSync(folder, 0o700);
      expect(readFileSync(join(folder, 'sheet.csv'), 'utf8')).toBe('former');
      expect(readdirSync(folder)).toEqual(['sheet.csv']);
    },
  );

  it.each([
    ['ENOSPC', 'the disk is full'],
    ['EDQUOT', 'your share of the disk is used up'],
    ['EIO', 'the system reports EIO'],
  ])('keeps the former file whole when the disk gives up half-way: %s', async (code, reason) => {
    const folder = temporaryFolder({ 'sheet.csv': 'former' });
    const halfWritten = await failHalfWay(code);
    await expect(writeWhole(join(folder, 'sheet.csv'), bytes)).rejects.toMatchObject({
      code: 'storage',
      message: `sheet.csv was not saved: ${reason}. Nothing was changed; choose another place.`,
    });
    expect(halfWritten()).toBe(true);
    expect(readFileSync(join(folder, 'sheet.csv'), 'utf8')).toBe('former');
    expect(readdirSync(folder)).toEqual(['sheet.csv']);
  });

  it('replaces the former file and leaves only the new one', async () => {
    const folder = temporaryFolder({ 'sheet.csv': 'former, and longer' });
    await writeWhole(join(folder, 'sheet.csv'), bytes);
    expect(readFileSync(join(folder, 'sheet.csv'), 'utf8')).toBe('new');
    expect(readdirSync(folder)).toEqual(['sheet.csv']);
  });
});
