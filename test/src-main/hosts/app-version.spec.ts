import { describe, expect, it } from 'vitest';
import { readVersion } from '../../../src-main/hosts/app-version.ts';
import { temporaryFolder } from './temporary-folder.ts';

describe('the version', () => {
  it.each(['{}', '{"version": 3}', 'null', '[]'])('is refused when the package file says %s', (text) => {
    expect(() => readVersion(temporaryFolder({ 'package.json': text }))).toThrow('names no version');
  });

  it('is the one in the package file', () => {
    expect(readVersion(temporaryFolder({ 'package.json': '{"version": "1.2.3"}' }))).toBe('1.2.3');
  });
});
