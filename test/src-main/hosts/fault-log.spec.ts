import { chmodSync, existsSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { faultLog } from '../../../src-main/hosts/fault-log.ts';
import { temporaryFolder } from './temporary-folder.ts';

function logOf(folder: string): string {
  return readFileSync(join(folder, 'faults.log'), 'utf8');
}

describe('the fault log', () => {
  const terminal: string[] = [];

  beforeEach(() => {
    terminal.length = 0;
    vi.useFakeTimers({ toFake: ['Date'], now: Date.UTC(2031, 4, 6) });
    const shown = vi.spyOn(console, 'error').mockImplementation((text) => void terminal.push(String(text)));
    return () => {
      shown.mockRestore();
      vi.useRealTimers();
    };
  });

  it('keeps running where its folder can not be made', () => {
    const folder = join(temporaryFolder({ file: '' }), 'file', 'data');
    expect(() => faultLog(folder)('items.list', new Error('broken'))).not.toThrow();
    expect(terminal.join('')).toContain('items.list: Error: broken');
  });

  it('keeps running where a folder stands in its place', () => {
    const folder = temporaryFolder({ 'faults.log/file': '' });
    expect(() => faultLog(folder)('items.list', new Error('broken'))).not.toThrow();
    expect(terminal).toHaveLength(1);
  });

  it('keeps running where what was thrown can not be put in words', () => {
    const folder = temporaryFolder();
    const report = faultLog(folder);
    for (const fault of [Object.create(null), Symbol('odd'), undefined])
      expect(() => report('items.list', fault)).not.toThrow();
    expect(logOf(folder).match(/^\S+ items\.list: /gmu)).toHaveLength(3);
    expect(logOf(folder)).toContain('can not be put in words');
  });

  it('records where it happened and the stack, and shows the same on the terminal', () => {
    const folder = join(temporaryFolder(), 'data');
    faultLog(folder)('items.list', new Error('broken'));
    expect(logOf(folder)).toMatch(/^2031-05-06T00:00:00\.000Z items\.list: Error: broken\n\s+at /);
    expect(`${terminal.join('')}\n`).toBe(logOf(folder));
  });

  it('records a thrown value that is no error', () => {
    const folder = temporaryFolder();
    faultLog(folder)('items.list', 'just text');
    expect(logOf(folder)).toMatch(/items\.list: just text\n$/);
  });

  it('names neither the rider’s home folder nor the secret path of the page', () => {
    const folder = temporaryFolder();
    const secret = 'S'.repeat(43);
    const text = `lost ${join(homedir(), 'tours', 'a.gpx')}\n    at http://127.0.0.1:8123/${secret}/assets/index.js:1:2`;
    faultLog(folder)('page, tours', text);
    expect(logOf(folder)).toContain(`lost ${join('~', 'tours', 'a.gpx')}\n`);
    expect(logOf(folder)).toContain('at page/assets/index.js:1:2\n');
    for (const said of [logOf(folder), terminal.join('')]) {
      expect(said).not.toContain(homedir());
      expect(said).not.toContain(secret);
    }
  });

  it('cuts off a fault of 20 MB soon, at 4,000 characters', () => {
    const folder = temporaryFolder();
    const report = faultLog(folder);
    for (const letter of ['x', '\n', '\u0007', '/']) report('items.list', letter.repeat(20_000_000));
    const entries = logOf(folder).split(/^(?=2031)/mu);
    expect(entries).toHaveLength(4);
    for (const entry of entries) expect(entry.length).toBeLessThanOrEqual(4001);
  });

  it('writes a fault in a loop a few times, with how often it came', () => {
    const folder = temporaryFolder();
    const report = faultLog(folder);
    for (let at = 0; at < 5000; at += 1) {
      report('items.list', 'broken');
      report('tours.list', 'broken too');
    }
    const lines = logOf(folder).trimEnd().split('\n');
    expect(lines.filter((line) => line.includes('items.list')).map((line) => line.slice(25))).toEqual([
      'items.list: broken',
      'items.list: (10 times so far) broken',
      'items.list: (100 times so far) broken',
      'items.list: (1000 times so far) broken',
    ]);
    expect(lines).toHaveLength(8);
    expect(terminal).toHaveLength(8);
  });

  it('writes a fault that comes again a minute later', () => {
    const folder = temporaryFolder();
    const report = faultLog(folder);
    for (const seconds of [0, 10, 59, 60]) {
      vi.setSystemTime(Date.UTC(2031, 4, 6, 0, 0, seconds));
      report('items.list', 'broken');
    }
    expect(logOf(folder)).toBe(
      '2031-05-06T00:00:00.000Z items.list: broken\n2031-05-06T00:01:00.000Z items.list: (4 times so far) broken\n',
    );
  });

  it('takes two files at most of a disk, however many different faults come', () => {
    const folder = temporaryFolder();
    const report = faultLog(folder);
    for (let at = 0; at < 1500; at += 1) report('items.list', `broken ${at} ${'x'.repeat(3900)}`);
    expect(readdirSync(folder).toSorted()).toEqual(['faults.log', 'faults.log.old']);
    for (const name of readdirSync(folder)) expect(statSync(join(folder, name)).size).toBeLessThan(1_010_000);
    expect(logOf(folder)).toContain('broken 1499');
  });

  it('sets a long log aside instead of growing it', () => {
    const folder = temporaryFolder({ 'faults.log': 'x'.repeat(1_000_001), 'faults.log.old': 'older' });
    faultLog(folder)('items.list', new Error('broken'));
    expect(statSync(join(folder, 'faults.log.old')).size).toBe(1_000_001);
    expect(logOf(folder)).not.toContain('xxx');
  });

  it.skipIf(process.platform === 'win32')('is for its owner alone, also where it was not before', () => {
    const folder = temporaryFolder({ 'faults.log': 'x'.repeat(1_000_001) });
    chmodSync(join(folder, 'faults.log'), 0o666);
    const report = faultLog(folder);
    report('items.list', 'broken');
    expect(statSync(join(folder, 'faults.log')).mode & 0o777).toBe(0o600);
    chmodSync(join(folder, 'faults.log'), 0o644);
    report('items.list', 'broken otherwise');
    expect(statSync(join(folder, 'faults.log')).mode & 0o777).toBe(0o600);
    expect(existsSync(join(folder, 'faults.log.old'))).toBe(true);
  });
});
