import { describe, expect, it } from 'vitest';
import { method, type Method } from '../../../../shared-types/scenario.ts';
import { lookOf, looksOf } from '../../../../src-renderer/parts/marks/looks.ts';

describe('looksOf()', () => {
  it('never gives two scenarios the same colour and dash', () => {
    const methods: Method[] = ['banks', 'banks', 'panel', 'banks', 'panel', 'hub'];
    const drawn = looksOf(methods).map(({ colour, dash }) => `${colour} ${dash.join(' ')}`);
    expect(new Set(drawn).size).toBe(methods.length);
  });

  it('keeps six scenarios of one method apart', () => {
    const drawn = looksOf(Array.from({ length: 6 }, (): Method => 'mix')).map(({ dash }) => dash.join(' '));
    expect(new Set(drawn).size).toBe(6);
  });

  it('keeps the colour of a method whatever its place', () => {
    expect(looksOf(['hub', 'banks', 'hub']).map(({ colour }) => colour)).toEqual([
      '--hub',
      '--banks',
      '--hub',
    ]);
  });

  it('tells methods apart by more than colour', () => {
    const looks = method.options.map(lookOf);
    expect(new Set(looks.map(({ marker }) => marker)).size).toBe(looks.length);
    expect(new Set(looks.map(({ dash }) => dash.join(' '))).size).toBe(looks.length);
  });
});
