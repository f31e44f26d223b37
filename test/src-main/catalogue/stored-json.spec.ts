import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { storedJson } from '../../../src-main/catalogue/stored-json.ts';
import { thrownBy } from './temporary-catalogue.ts';

const metres = z.array(z.number({ error: 'a number' }).max(9000, { error: 'at most 9000 m' }));

describe('storedJson()', () => {
  it('takes text that is no JSON for damage', () => {
    const thrown = thrownBy(() => storedJson(metres, '[420, 9', 'heights'));
    expect(thrown).toMatchObject({ fault: 'damaged' });
  });

  it.each([
    ['a list with words in it', '[420, "high"]', '1: a number'],
    ['a figure beyond its limit', '[420, 640, 9001]', '2: at most 9000 m'],
    ['null where a number belongs', '[null]', '0: a number'],
  ])('names what was stored and where it breaks: %s', (_, text, where) => {
    expect(() => storedJson(metres, text, 'heights of leg 2')).toThrow(
      `The catalogue has heights of leg 2 that break a rule: ${where}.`,
    );
  });

  it('gives back exactly the numbers that were written', () => {
    const written = [0.1, 1 / 3, -450, 5e-324, 9000];
    expect(storedJson(metres, JSON.stringify(written), 'heights')).toEqual(written);
  });
});
