import { openSync, closeSync, ftruncateSync, appendFileSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { entryText } from '../../../src-main/hosts/fault-entry.ts';
import { recentFaults } from '../../../src-main/hosts/recent-faults.ts';
import { temporaryFolder } from './temporary-folder.ts';

const at = '2031-05-06T07:08:09.123Z';

function logged(first: number, last: number): string {
  let log = '';
  for (let number = first; number <= last; number += 1)
    log += entryText({ at, where: 'items.list', what: `fault ${number}` });
  return log;
}

function found(folder: string, count = 3): readonly string[] {
  return recentFaults(folder, count).map(({ what }) => what);
}

describe('the last faults', () => {
  it('are none where there is no log, or a folder in its place', () => {
    const folder = temporaryFolder();
    expect(found(folder)).toEqual([]);
    expect(found(join(folder, 'nowhere'))).toEqual([]);
    mkdirSync(join(folder, 'faults.log'));
    expect(found(folder)).toEqual([]);
  });

  it('are none where none are asked for', () => {
    expect(found(temporaryFolder({ 'faults.log': logged(1, 3) }), 0)).toEqual([]);
  });

  it('come from the end of a log of 3 GB at once', () => {
    const folder = temporaryFolder({ 'faults.log': logged(1, 2) });
    // A file of holes takes no room; what is read of it is NUL.
    const log = openSync(join(folder, 'faults.log'), 'r+');
    ftruncateSync(log, 3_000_000_000);
    closeSync(log);
    appendFileSync(join(folder, 'faults.log'), `\n${logged(8, 9)}`);
    const beforeMs = performance.now();
    expect(found(folder)).toEqual(['fault 9', 'fault 8']);
    expect(performance.now() - beforeMs).toBeLessThan(1000);
  });

  it('begin with a whole line where only the end of a log is read', () => {
    const forged = `${at} tours.list: forged`;
    const folder = temporaryFolder({ 'faults.log': `x${forged.repeat(20_000)}\n${logged(7, 7)}` });
    expect(found(folder)).toEqual(['fault 7']);
  });

  it('come the newest first, no more than are asked for', () => {
    const folder = temporaryFolder({ 'faults.log': logged(1, 5) });
    expect(found(folder)).toEqual(['fault 5', 'fault 4', 'fault 3']);
  });

  it('go on in the log that was set aside', () => {
    const folder = temporaryFolder({ 'faults.log': logged(4, 4), 'faults.log.old': logged(1, 3) });
    expect(found(folder)).toEqual(['fault 4', 'fault 3', 'fault 2']);
  });
});
