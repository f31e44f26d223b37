import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withoutHome } from '../../shared-types/without-home.ts';

describe('withoutHome()', () => {
  it.each([
    ['/home/ann', '/home/ann/data/a.sqlite3', '~/data/a.sqlite3'],
    ['/home/ann/', 'in /home/ann.', 'in ~.'],
    ['/home/ann', 'file:///home/ann/app/x.js:3:7', 'file://~/app/x.js:3:7'],
    ['C:\\Users\\Ann', 'C:\\Users\\Ann\\data', '~\\data'],
    ['C:\\Users\\Ann', 'file:///C:/Users/Ann/app/x.js', 'file:///~/app/x.js'],
    ['C:\\Users\\Ann', '"C:\\\\Users\\\\Ann\\\\data"', '"~\\\\data"'],
    ['C:\\Users\\Ann', 'c:\\users\\ann\\data', '~\\data'],
    ['/home/ann lee', 'file:///home/ann%20lee/x.js', 'file://~/x.js'],
    ['/home/a.b(c)', '/home/a.b(c)/x and /home/aXb(c)/x', '~/x and /home/aXb(c)/x'],
  ])('writes ~ for %s', (home, text, expected) => {
    expect(withoutHome(text, home)).toBe(expected);
  });

  it.each([
    ['/home/ann', '/home/anna/data'],
    ['/home/ann', '/home/ann-marie/data'],
    ['/root', '/srv/root/data'],
    ['/', '/any/path'],
    ['', '/any/path'],
  ])('leaves what is not the home %s alone', (home, text) => {
    expect(withoutHome(text, home)).toBe(text);
  });

  it('leaves no home of whatever letters in a path', () => {
    const name = fc.stringMatching(/^[\p{L}\p{N} .()[\]{}+^$-]{1,12}$/u).filter((each) => each.trim() !== '');
    fc.assert(
      fc.property(name, (user) => {
        const home = `/home/${user}`;
        return !withoutHome(`at ${home}/data, ${encodeURI(home)}/app`, home).includes(`/home/`);
      }),
      { numRuns: 100 },
    );
  });
});
