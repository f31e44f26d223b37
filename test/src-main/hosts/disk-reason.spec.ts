import { describe, expect, it } from 'vitest';
import { diskReason } from '../../../src-main/hosts/disk-reason.ts';

describe('a disk reason', () => {
  it('names the code where there are no words for it', () => {
    expect(diskReason(Object.assign(new Error('odd'), { code: 'EODD' }))).toBe('the system reports EODD');
  });

  it('survives what is not a system error', () => {
    expect(diskReason('thrown text')).toBe('the system reports unknown');
  });

  it('says in words that the disk is full', () => {
    expect(diskReason(Object.assign(new Error(), { code: 'ENOSPC' }))).toBe('the disk is full');
  });
});
