import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alike } from '../../../src-renderer/state/carry-over.ts';
import { DraftStore, type Shelf } from '../../../src-renderer/state/draft-store.ts';
import { randomItem } from '../../src-main/catalogue/random-drafts.ts';
import { FakeShelf } from '../support/fake-page.ts';

const here = '/data/catalogue.sqlite3';

const key = fc.stringMatching(/^[a-z]+\/[a-z-]+$/);
/** JSON has no word for some of these numbers. */
const noNumber = fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY);
const draft = fc.tuple(randomItem('device'), noNumber).map(([item, massG]) => ({ ...item, massG }));

describe('DraftStore', () => {
  it.each<[string, () => Shelf]>([
    [
      'is forbidden',
      () => {
        throw new DOMException('The operation is insecure.', 'SecurityError');
      },
    ],
    [
      'is full',
      () => ({
        getItem: () => null,
        removeItem: () => undefined,
        setItem: () => {
          throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
        },
      }),
    ],
  ])('keeps nothing and breaks nothing where the shelf %s', (_, shelf) => {
    const store = new DraftStore(shelf);
    expect(() => store.keep(here, { 'items/a': { massG: 1 } })).not.toThrow();
    expect(store.read(here)).toEqual({});
  });

  it('forgets the older draft where the shelf has no room for the newer', () => {
    const shelf = new FakeShelf();
    const store = new DraftStore(() => shelf);
    store.keep(here, { 'items/a': 'older' });
    shelf.setItem = () => {
      throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
    };
    store.keep(here, { 'items/a': 'newer' });
    expect(store.read(here)).toEqual({});
  });

  it.each(['', '{', 'null', '[1]', '"text"', '7'])('reads nothing from a shelf that holds %j', (text) => {
    const shelf = new FakeShelf();
    const store = new DraftStore(() => shelf);
    store.keep(here, { 'items/a': 1 });
    for (const name of shelf.held.keys()) shelf.held.set(name, text);
    expect(store.read(here)).toEqual({});
  });

  it('leaves out a draft that is too long, and keeps those beside it', () => {
    const shelf = new FakeShelf();
    const store = new DraftStore(() => shelf);
    store.keep(here, { long: 'x'.repeat(2_000_000), 'items/a': 'short' });
    expect(store.read(here)).toEqual({ 'items/a': 'short' });
  });

  it('keeps those of each catalogue by themselves, and nothing of a catalogue that has none', () => {
    const shelf = new FakeShelf();
    const store = new DraftStore(() => shelf);
    store.keep(here, { 'items/a': 1 });
    store.keep('/data/catalogue-2.sqlite3', { 'items/a': 2 });
    expect(store.read(here)).toEqual({ 'items/a': 1 });
    store.keep(here, {});
    expect([store.read(here), shelf.held.size]).toEqual([{}, 1]);
  });

  it('gives back whatever was kept, numbers that are none included', () => {
    fc.assert(
      fc.property(fc.dictionary(key, draft), (drafts) => {
        const shelf = new FakeShelf();
        new DraftStore(() => shelf).keep(here, drafts);
        expect(alike(new DraftStore(() => shelf).read(here), drafts)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });
});
