import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { backupsIn, isBackupName, isBackupOf, nameBackup } from '../../../src-main/catalogue/backup-names.ts';
import { temporaryFolder } from './temporary-catalogue.ts';

const morning = new Date('2027-05-03T06:07:08.009Z');

describe('the names of backups', () => {
  it.each(['catalogue.sqlite3', 'catalogue-2.sqlite3', 'notes.txt', 'catalogue-20270503-step-1.sqlite3'])(
    'do not include %s',
    (name) => {
      expect(isBackupName(`folder/${name}`)).toBe(false);
    },
  );

  it('tell a catalogue from another whose name begins alike', () => {
    const name = nameBackup('data/catalogue-2.sqlite3', 230, morning);
    expect(name).toBe('catalogue-2-20270503T060708009Z-step-230.sqlite3');
    expect(['catalogue.sqlite3', 'catalogue-2.sqlite3'].map((file) => isBackupOf(file, name))).toEqual([
      false,
      true,
    ]);
  });

  it('say when each was made, the newest first, and leave other files out', () => {
    const folder = temporaryFolder();
    const names = [230, 10].map((step, day) =>
      nameBackup('catalogue.sqlite3', step, new Date(morning.getTime() + day * 86_400_000)),
    );
    for (const name of [...names, 'notes.txt', `${names[0]}.part`]) writeFileSync(join(folder, name), '');
    mkdirSync(join(folder, 'more'));
    expect(backupsIn(folder).map(({ madeAt }) => madeAt)).toEqual([
      '2027-05-04T06:07:08.009Z',
      '2027-05-03T06:07:08.009Z',
    ]);
  });

  it('are none in a folder that is not there', () => {
    expect(backupsIn(join(temporaryFolder(), 'backups'))).toEqual([]);
  });
});
