import { describe, expect, it } from 'vitest';
import { bytesText } from '../../../../src-renderer/parts/text/bytes-text.ts';

describe('bytesText()', () => {
  it.each([
    [0, '0\u00a0bytes'],
    [999, '999\u00a0bytes'],
    [1000, '1\u00a0kB'],
    [233_472, '233\u00a0kB'],
    [999_499, '999\u00a0kB'],
    [999_600, '1\u00a0MB'],
    [1_250_000, '1.3\u00a0MB'],
  ])('writes %d bytes as %s', (bytes, text) => {
    expect(bytesText(bytes)).toBe(text);
  });
});
