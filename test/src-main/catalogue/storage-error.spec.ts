import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../db/demo/demo.ts';
import { success } from '../../../shared-types/outcome.ts';
import { connectToWrite, type WriteDb } from '../../../src-main/catalogue/connection.ts';
import { listItems, saveItem } from '../../../src-main/catalogue/items.ts';
import {
  asStorageError,
  storageError,
  StorageError,
  withStorageOutcome,
} from '../../../src-main/catalogue/storage-error.ts';
import { opened, temporaryFile, thrownBy } from './temporary-catalogue.ts';

const [{ id: phoneId, ...phone }] = demoItems as [(typeof demoItems)[number]];

function faultOf(work: () => unknown): string | undefined {
  return asStorageError(thrownBy(work))?.fault;
}

describe('asStorageError()', () => {
  it('is null for a refused row, which is our fault', () => {
    const { write } = opened();
    const thrown = thrownBy(() => saveItem(write, { ...phone, massG: -1 }, phoneId));
    expect(thrown).toMatchObject({ code: 'SQLITE_CONSTRAINT_CHECK' });
    expect(asStorageError(thrown)).toBeNull();
  });

  it('is null for what is no storage fault', () => {
    expect([asStorageError(new TypeError('x')), asStorageError('x'), asStorageError(null)]).toEqual([
      null,
      null,
      null,
    ]);
  });

  it('tells a catalogue that another program is writing to', () => {
    const file = temporaryFile();
    const { write } = opened(file);
    write.pragma('busy_timeout = 10');
    const other = connectToWrite(file);
    other.exec('BEGIN IMMEDIATE');
    expect(faultOf(() => saveItem(write, phone, phoneId))).toBe('locked');
    other.close();
  });

  it('tells a full disk, and the catalogue stays whole', () => {
    const { read, write } = opened();
    saveItem(write, phone, phoneId);
    const pages = write.pragma('page_count', { simple: true }) as number;
    write.pragma(`max_page_count = ${pages}`);
    const fill = (): void => {
      for (let index = 0; index < 1000; index++) saveItem(write, { ...phone, notes: 'n'.repeat(2000) });
    };
    expect(faultOf(fill)).toBe('full');
    expect(listItems(read).filter((item) => item.id === phoneId)).toHaveLength(1);
    expect(write.pragma('integrity_check', { simple: true })).toBe('ok');
  });

  it('tells a catalogue that may only be read', () => {
    const { read } = opened();
    // What the types forbid: a read handle in the place of a write handle.
    expect(faultOf(() => saveItem(read as WriteDb, phone, phoneId))).toBe('read-only');
  });

  it.each([
    ['SQLITE_CORRUPT_INDEX', 'damaged'],
    ['SQLITE_NOTADB', 'not-a-catalogue'],
    ['SQLITE_CANTOPEN', 'unreachable'],
    ['SQLITE_IOERR_WRITE', 'disk-fault'],
    ['SQLITE_BUSY_SNAPSHOT', 'locked'],
    ['ENOSPC', 'full'],
    ['EROFS', 'read-only'],
  ])('sorts the code %s as %s', (code, fault) => {
    expect(asStorageError(Object.assign(new Error(code), { code }))?.fault).toBe(fault);
  });

  it('passes a storage error on as it is', () => {
    const error = storageError('full', 'a.sqlite');
    expect(asStorageError(error)).toBe(error);
  });

  it('names the file, says what to do, keeps the cause', () => {
    const cause = Object.assign(new Error('disk I/O'), { code: 'ENOSPC' });
    const error = asStorageError(cause, '/data/catalogue.sqlite');
    expect(error?.message).toBe(
      'There is no room left on the disk for the catalogue /data/catalogue.sqlite. Free some space, then try again.',
    );
    expect(error?.cause).toBe(cause);
  });
});

describe('withStorageOutcome()', () => {
  it('lets a bug through', () => {
    const bug = new TypeError('a bug');
    const work = (): never => {
      throw bug;
    };
    expect(thrownBy(() => withStorageOutcome(work))).toBe(bug);
  });

  it('answers a storage fault with its sentence', () => {
    const work = (): never => {
      throw new StorageError('full', 'No room.');
    };
    expect(withStorageOutcome(work)).toEqual({
      ok: false,
      error: { code: 'storage', message: 'No room.', fields: [] },
    });
  });

  it('passes an answer on as it is', () => {
    expect(withStorageOutcome(() => success(4))).toEqual({ ok: true, value: 4 });
  });
});
