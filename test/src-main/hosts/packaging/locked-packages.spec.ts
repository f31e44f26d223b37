import { describe, expect, it } from 'vitest';
import { neededPackages, readLock } from '../../../../src-main/hosts/packaging/locked-packages.ts';
import { temporaryFolder } from '../temporary-folder.ts';

/** Two versions of `twice`: `a` has one of its own, which hides the outer one from it and from what lies within. */
const lock = {
  '': { dependencies: { a: '1', 'only-here': '1' }, devDependencies: { tool: '1' } },
  'node_modules/a': { dependencies: { twice: '1', '@scope/b': '1' } },
  'node_modules/a/node_modules/twice': {},
  'node_modules/@scope/b': {
    dependencies: { twice: '2', a: '1' },
    optionalDependencies: { 'not-here': '1' },
  },
  'node_modules/only-here': { dependencies: { deep: '1' } },
  'node_modules/deep': {},
  'node_modules/twice': {},
  'node_modules/tool': {},
};

describe('the packages needed to run', () => {
  it('leave out what only developing needs, and an optional one this system lacks', () => {
    const needed = neededPackages(lock);
    expect(needed).not.toContain('node_modules/tool');
    expect(needed.size).toBe(6);
  });

  it('are found where Node would find them, each version in its own folder, in circles too', () => {
    expect([...neededPackages(lock)].toSorted()).toEqual([
      'node_modules/@scope/b',
      'node_modules/a',
      'node_modules/a/node_modules/twice',
      'node_modules/deep',
      'node_modules/only-here',
      'node_modules/twice',
    ]);
  });

  it('stop at a package that is excepted, with what only it needs', () => {
    const needed = neededPackages(lock, new Set(['only-here']));
    expect(needed).not.toContain('node_modules/only-here');
    expect(needed).not.toContain('node_modules/deep');
    expect(needed.size).toBe(4);
  });

  it('are read from the lock file of a project', () => {
    const project = temporaryFolder({ 'package-lock.json': JSON.stringify({ packages: lock }) });
    expect(readLock(project)).toEqual(lock);
  });
});
