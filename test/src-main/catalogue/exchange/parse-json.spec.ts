import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseJson } from '../../../../src-main/catalogue/exchange/parse-json.ts';

function wordsOn(text: string): string {
  const outcome = parseJson(text);
  return outcome.ok ? 'read' : outcome.error.message;
}

describe('parseJson()', () => {
  it('says that a file was cut off', () => {
    for (const text of ['{"items": [', '{"items": [{"id": "a', '{"items"'])
      expect(wordsOn(text)).toMatch(/^The file ends in the middle: it may have been cut off\./);
    expect(wordsOn(' \n')).toBe('The file is empty. Nothing was changed.');
  });

  it('says where a file stops making sense', () => {
    expect(wordsOn('{\n  "items": [1, }')).toMatch(/^The file stops making sense in line 2, column 16:/);
    expect(wordsOn('kind,label\nbank,Mine')).toMatch(/^The file stops making sense in line 1, column 1:/);
  });

  it('refuses lists within lists without end', () => {
    for (const depth of [100, 10_000, 200_000])
      expect(wordsOn('['.repeat(depth) + ']'.repeat(depth))).toContain('more than 32 deep');
  });

  it('refuses a group of more fields than anything here has', () => {
    const group = (count: number) =>
      JSON.stringify({
        items: [Object.fromEntries(Array.from({ length: count }, (_, place) => [`k${place}`, 0]))],
      });
    expect(wordsOn(group(1001))).toContain('a group of more than 1,000 fields');
    expect(wordsOn(group(1000))).toBe('read');
  });

  it('makes whole characters of halves, which no database keeps', () => {
    expect(parseJson(String.raw`{"label": "\ud83d!"}`)).toMatchObject({ value: { label: '\ufffd!' } });
    expect(parseJson(String.raw`{"label": "\ud83d\udeb2"}`)).toMatchObject({ value: { label: '🚲' } });
  });

  it('reads all JSON there is, with or without a mark of its encoding before it', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), (value) => {
        expect(parseJson(`\uFEFF${JSON.stringify(value)}`)).toEqual({
          ok: true,
          value: JSON.parse(JSON.stringify(value)) as unknown,
        });
      }),
    );
  });
});
