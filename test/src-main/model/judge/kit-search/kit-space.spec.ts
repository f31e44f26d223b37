import { describe, expect, it } from 'vitest';
import {
  kitCount,
  kitsOf,
  type Kit,
  type KitOption,
} from '../../../../../src-main/model/judge/kit-search/kit-space.ts';

const option = (least: number, most: number, toBuyMinor: number, grams: number): KitOption => ({
  ...{ least, most },
  each: { toBuyMinor, grams, frontWheelGrams: grams / 10 },
});
/** A bank or two that are owned, a panel that is not, a charger that must come. */
const options = [option(0, 2, 0, 350), option(0, 1, 8400, 560), option(1, 1, 0, 95)];
const all = (): boolean => true;

describe('kitCount()', () => {
  it('multiplies the choices of each option; none make one empty kit', () => {
    expect([kitCount(options), kitCount([]), kitCount([option(0, 9, 0, 0)])]).toEqual([6, 1, 10]);
  });
});

describe('kitsOf()', () => {
  it('makes every kit once, with the sum of its items', () => {
    const kits = kitsOf(options, all);
    expect(new Set(kits.map(({ counts }) => counts.join())).size).toBe(6);
    const whole = kits.find(({ counts }) => counts.join() === '2,1,1')!;
    expect(whole).toMatchObject({ toBuyMinor: 8400, grams: 1355, frontWheelGrams: 135.5 });
  });

  it('puts a kit that costs and weighs no more than another before it', () => {
    const kits = kitsOf(options, all);
    const noMore = (a: Kit, b: Kit): boolean =>
      a.toBuyMinor <= b.toBuyMinor && a.grams <= b.grams && a.frontWheelGrams <= b.frontWheelGrams;
    kits.forEach((kit, at) => {
      for (const earlier of kits.slice(0, at))
        expect(noMore(kit, earlier) && !noMore(earlier, kit)).toBe(false);
    });
  });

  it('leaves out what is not allowed', () => {
    const kits = kitsOf(options, ({ grams }) => grams <= 500);
    expect(kits.map(({ counts }) => counts.join())).toEqual(['0,0,1', '1,0,1']);
  });
});
