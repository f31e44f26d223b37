import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { largestFileBytes } from '../../../../shared-types/contract.ts';
import { readText } from '../../../../src-main/hosts/electron/read-text.ts';
import { temporaryFolder } from '../temporary-folder.ts';

function read(content: string | Uint8Array): Promise<string> {
  return readText(join(temporaryFolder({ 'kit.csv': content }), 'kit.csv'));
}

describe('reading a chosen file', () => {
  it('refuses more than 20 MB with the limit named', async () => {
    await expect(read(new Uint8Array(largestFileBytes + 1))).rejects.toMatchObject({
      code: 'too-large',
      message: 'kit.csv is too large: at most 20 MB are read.',
    });
  });

  it('refuses what is not UTF-8, such as UTF-16', async () => {
    await expect(read(Buffer.from('\ufeffLabel', 'utf16le'))).rejects.toMatchObject({
      code: 'unreadable',
      message: 'kit.csv is not text in UTF-8: save it again in that encoding.',
    });
  });

  it('names the reason for a file that has gone', async () => {
    await expect(readText(join(temporaryFolder(), 'gone.csv'))).rejects.toMatchObject({
      code: 'unreadable',
      message: 'gone.csv could not be read: the folder or file is no longer there.',
    });
  });

  it('refuses a folder', async () => {
    await expect(readText(temporaryFolder())).rejects.toMatchObject({ code: 'unreadable' });
  });

  it('reads exactly 20 MB', async () => {
    expect(await read(new Uint8Array(largestFileBytes).fill(0x61))).toHaveLength(largestFileBytes);
  });

  it('reads letters of any script, without a byte order mark', async () => {
    expect(await read('\ufeffLampe für Straße, ランプ')).toBe('Lampe für Straße, ランプ');
  });
});
