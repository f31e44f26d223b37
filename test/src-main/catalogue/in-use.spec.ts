import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogueInUse, inUseNote, keepInUse } from '../../../src-main/catalogue/in-use.ts';
import { temporaryFolder, thrownBy } from './temporary-catalogue.ts';

describe('the catalogue in use', () => {
  it.each(['', '{"file": "catalogue-2', '[]', '{"file": 2}', '{"file": ""}', '{"file": "a", "more": 1}'])(
    'is refused, not guessed, where its note says %j',
    (text) => {
      const folder = temporaryFolder();
      writeFileSync(join(folder, inUseNote), text);
      expect(thrownBy(() => catalogueInUse(folder))).toMatchObject({
        fault: 'unreachable',
        message: expect.stringContaining(join(folder, inUseNote)) as unknown,
      });
    },
  );

  it('is the usual one where nothing was chosen', () => {
    const folder = temporaryFolder();
    expect(catalogueInUse(folder)).toEqual({ file: join(folder, 'catalogue.sqlite3'), chosen: false });
  });

  it('is the one that was kept last, and must be there', () => {
    const [folder, other] = [temporaryFolder(), temporaryFolder()];
    for (const file of [join(folder, 'catalogue-2.sqlite3'), join(other, 'catalogue.sqlite3')]) {
      keepInUse(folder, file);
      expect(catalogueInUse(folder)).toEqual({ file, chosen: true });
    }
    expect(readdirSync(folder)).toEqual([inUseNote]);
  });

  it('goes along when its folder is moved', () => {
    const [before, after] = [temporaryFolder(), temporaryFolder()];
    keepInUse(before, join(before, 'catalogue-2.sqlite3'));
    writeFileSync(join(after, inUseNote), readFileSync(join(before, inUseNote)));
    expect(catalogueInUse(after).file).toBe(join(after, 'catalogue-2.sqlite3'));
  });

  it('leaves the former choice where a new one can not be written down', () => {
    const folder = temporaryFolder();
    expect(() => keepInUse(join(folder, 'gone'), 'elsewhere.sqlite3')).toThrow(/ENOENT/);
    expect(readdirSync(folder)).toEqual([]);
  });
});
