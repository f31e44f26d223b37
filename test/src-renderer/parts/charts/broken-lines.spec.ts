import { describe, expect, it } from 'vitest';
import { brokenLines } from '../../../../src-renderer/parts/charts/broken-lines.ts';

/** As in a face of even width: 10 px a letter. */
const measure = (text: string): number => text.length * 10;
const lines = (text: string, widthPx: number) => brokenLines(text, widthPx, measure);

describe('brokenLines()', () => {
  it('keeps an empty text a line', () => {
    expect(lines('', 50)).toEqual(['']);
  });

  it('puts one letter on a line that takes none', () => {
    expect(lines('abc', 5)).toEqual(['a', 'b', 'c']);
  });

  it('breaks a word wider than a line anywhere', () => {
    expect(lines('to ridge_and_back.gpx up', 100)).toEqual(['to', 'ridge_and_', 'back.gpx', 'up']);
  });

  it('never breaks at a space that binds', () => {
    expect(lines('costs 8\u00a0min', 90)).toEqual(['costs', '8\u00a0min']);
  });

  it('fills each line as far as it goes', () => {
    expect(lines('the hub gives it', 110)).toEqual(['the hub', 'gives it']);
    expect(lines('the hub gives it', 130)).toEqual(['the hub gives', 'it']);
    expect(lines('the hub gives it', 160)).toEqual(['the hub gives it']);
  });
});
