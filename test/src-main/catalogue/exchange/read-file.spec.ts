import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCatalogueFile } from '../../../../src-main/catalogue/exchange/read-file.ts';
import { fileOf } from './stored-file.ts';

function errorOf(text: string) {
  const outcome = readCatalogueFile(text);
  return outcome.ok ? null : outcome.error;
}

describe('readCatalogueFile()', () => {
  it('tells other JSON by its own word', () => {
    for (const text of ['[]', 'null', '7', '{"kind": "bank"}', '{"format": "something-else"}'])
      expect(errorOf(text)).toMatchObject({
        code: 'unreadable',
        message: expect.stringContaining('This is not a Chargewright catalogue file') as string,
      });
    expect(errorOf('{"format": "chargewright-comparison", "formatVersion": 1}')?.message).toMatch(
      /^This is the JSON of a comparison sheet/,
    );
  });

  it('refuses a file of a newer version', () => {
    expect(errorOf(fileOf({ formatVersion: 2, items: 'of another sort' }))?.message).toBe(
      'This file was written by a newer version of Chargewright (format 2); this one reads up to 1. Take it in with the newer ' +
        'version. Nothing was changed.',
    );
    expect(errorOf(fileOf({ formatVersion: 'two' }))).toMatchObject({
      code: 'bad-input',
      fields: [{ path: 'formatVersion', allowed: 'one of: 1', got: '"two"' }],
    });
  });

  it('refuses lists that are none, are endless or unknown', () => {
    expect(errorOf(fileOf({ items: 'none', bicycles: [] }))?.fields).toEqual([
      { path: 'items', allowed: 'a list of at most 200,000 entries', got: '"none"' },
      { path: '', allowed: 'no field named bicycles', got: expect.any(String) as string },
    ]);
    expect(errorOf(fileOf({ tours: Array.from({ length: 200_001 }, () => 0) }))?.fields).toMatchObject([
      { path: 'tours', allowed: 'a list of at most 200,000 entries' },
    ]);
  });

  it('refuses more entries in all than the largest file has room for', () => {
    const half = new Array<number>(100_001).fill(0);
    expect(errorOf(fileOf({ items: half, readings: half }))?.fields).toMatchObject([
      { path: '', allowed: 'lists of together at most 200,000 entries' },
    ]);
  });

  it('takes a list that is left out for an empty one', () => {
    expect(readCatalogueFile(fileOf({ items: [1] }))).toMatchObject({
      ok: true,
      value: { items: [1], tours: [], scenarios: [], readings: [], estimates: [] },
    });
  });

  it('answers whatever text it is given', () => {
    const anyFile = fc.dictionary(
      fc.constantFrom('format', 'formatVersion', 'madeOn', 'items', 'settings', '__proto__'),
      fc.oneof(fc.jsonValue(), fc.constantFrom('chargewright-catalogue', 1)),
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          anyFile.map((value) => JSON.stringify(value)),
        ),
        (text) => {
          const outcome = readCatalogueFile(text);
          expect(outcome.ok || outcome.error.message.length > 0).toBe(true);
        },
      ),
    );
  });
});
