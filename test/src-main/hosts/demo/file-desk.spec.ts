import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { terminalDesk } from '../../../../src-main/hosts/demo/file-desk.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const bytes = new TextEncoder().encode('Margin +31 %');

function setup(folder = join(temporaryFolder(), 'demo-output')) {
  const printed: string[] = [];
  return { folder, printed, desk: terminalDesk(folder, (text) => printed.push(text)) };
}

describe('the file desk of the demo', () => {
  it('rejects where its folder can not be made', async () => {
    const { desk } = setup(join(temporaryFolder({ file: '' }), 'file', 'demo-output'));
    await expect(desk.save({ fileName: 'a.csv', mediaType: 'text/csv', bytes })).rejects.toThrow();
  });

  it('writes nowhere but into its folder', async () => {
    const { desk, folder } = setup();
    const delivery = await desk.save({ fileName: '../../a.csv', mediaType: 'text/csv', bytes });
    expect(delivery).toEqual({ as: 'saved', path: join(folder, 'a.csv') });
    expect(existsSync(join(folder, 'a.csv'))).toBe(true);
  });

  it('chooses no file', async () => {
    expect(await setup().desk.choose('inventory-csv')).toEqual({ as: 'cancelled' });
  });

  it('prints plain text and writes no file for it', async () => {
    const { desk, folder, printed } = setup();
    await desk.save({ fileName: 'a.txt', mediaType: 'text/plain; charset=utf-8', bytes });
    expect(printed).toEqual(['Margin +31 %']);
    expect(existsSync(folder)).toBe(false);
  });

  it('writes other files whole', async () => {
    const { desk, folder, printed } = setup();
    await desk.save({ fileName: 'a.pdf', mediaType: 'application/pdf', bytes });
    expect(readFileSync(join(folder, 'a.pdf'), 'utf8')).toBe('Margin +31 %');
    expect(printed).toEqual([]);
  });
});
