import { describe, expect, it } from 'vitest';
import {
  keepTypedText,
  removeTypedEntry,
  typedTexts,
} from '../../../../src-renderer/parts/fields/typed-text.ts';

const typed = (text: string) => ({ text, value: Number.NaN });

describe('typed texts', () => {
  it('are kept by form and path, until taken back', () => {
    const [one, other] = [{}, {}];
    keepTypedText(one, 'massG', typed('abc'));
    expect(typedTexts(one).get('massG')?.text).toBe('abc');
    expect(typedTexts(other).size).toBe(0);
    keepTypedText(one, 'massG', null);
    expect(typedTexts(one).size).toBe(0);
  });

  it('move up with the entries of a list when one is removed', () => {
    const form = {};
    for (const path of ['points.0.powerW', 'points.1.powerW', 'points.2.speedKmh', 'pointsOther.2.x']) {
      keepTypedText(form, path, typed(path));
    }
    removeTypedEntry(form, 'points', 1);
    const texts = [...typedTexts(form)].map(([path, { text }]) => [path, text]);
    expect(Object.fromEntries(texts)).toEqual({
      'points.0.powerW': 'points.0.powerW',
      'points.1.speedKmh': 'points.2.speedKmh',
      'pointsOther.2.x': 'pointsOther.2.x',
    });
  });
});
