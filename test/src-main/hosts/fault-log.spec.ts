import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { faultLog } from '../../../src-main/hosts/fault-log.ts';
import { temporaryFolder } from './temporary-folder.ts';

describe('the fault log', () => {
  const terminal: string[] = [];

  beforeEach(() => {
    terminal.length = 0;
    const write = vi
      .spyOn(process.stderr, 'write')
      .mockImplementation((text) => terminal.push(String(text)) > 0);
    return () => write.mockRestore();
  });

  it('keeps running where its folder can not be made', () => {
    const folder = join(temporaryFolder({ file: '' }), 'file', 'data');
    expect(() => faultLog(folder)('items.list', new Error('broken'))).not.toThrow();
    expect(terminal.join('')).toContain('items.list: Error: broken');
  });

  it('records where it happened and the stack', () => {
    const folder = join(temporaryFolder(), 'data');
    faultLog(folder)('items.list', new Error('broken'));
    const log = readFileSync(join(folder, 'faults.log'), 'utf8');
    expect(log).toMatch(/^\d{4}-\d\d-\d\dT\S+Z items\.list: Error: broken\n\s+at /);
  });

  it('records a thrown value that is no error', () => {
    const folder = temporaryFolder();
    faultLog(folder)('items.list', 'just text');
    expect(readFileSync(join(folder, 'faults.log'), 'utf8')).toMatch(/items\.list: just text\n$/);
  });

  it('sets a long log aside instead of growing it', () => {
    const folder = temporaryFolder({ 'faults.log': 'x'.repeat(1_000_001) });
    faultLog(folder)('items.list', new Error('broken'));
    expect(statSync(join(folder, 'faults.log.old')).size).toBe(1_000_001);
    expect(readFileSync(join(folder, 'faults.log'), 'utf8')).not.toContain('xxx');
  });
});
