import { existsSync, mkdirSync, readFileSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { climateCredit, climateSources } from '../../../src-main/catalogue/climate-credit.ts';
import {
  climateNotes,
  climateNotesFile,
  writeClimateNotes,
} from '../../../src-main/catalogue/climate-notes.ts';
import { temporaryFolder } from './temporary-catalogue.ts';

const longAgo = new Date('2020-01-01T00:00:00Z');

function writtenIn(folder: string): string {
  return readFileSync(join(folder, climateNotesFile), 'utf8');
}

describe('writeClimateNotes()', () => {
  it('passes over a folder that is missing', () => {
    const folder = join(temporaryFolder(), 'gone');
    writeClimateNotes(folder);
    expect(existsSync(folder)).toBe(false);
  });

  it('passes over a folder in the place of the file', () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, climateNotesFile));
    writeClimateNotes(folder);
    expect(statSync(join(folder, climateNotesFile)).isDirectory()).toBe(true);
  });

  it('writes the credit and every code', () => {
    const folder = temporaryFolder();
    writeClimateNotes(folder);
    const text = writtenIn(folder);
    expect(text.startsWith(climateCredit)).toBe(true);
    for (const { code, what } of climateSources) expect(text).toContain(`\n${code}: ${what}\n`);
  });

  it('replaces words that are not those of today', () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, climateNotesFile), 'older words');
    writeClimateNotes(folder);
    expect(writtenIn(folder)).toBe(climateNotes());
  });

  it('leaves a file alone that says it already', () => {
    const folder = temporaryFolder();
    writeClimateNotes(folder);
    utimesSync(join(folder, climateNotesFile), longAgo, longAgo);
    writeClimateNotes(folder);
    expect(statSync(join(folder, climateNotesFile)).mtime).toEqual(longAgo);
  });
});
