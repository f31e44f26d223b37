import { describe, expect, it } from 'vitest';
import type { ItemKind } from '../../../../shared-types/item.ts';
import { firstKitOf } from '../../../../src-main/model/judge/advice-first-kit.ts';
import type { Standing } from '../../../../src-main/model/judge/advised.ts';

const best = (...kindsToBuy: ItemKind[]): Standing => ({ scenario: { kindsToBuy } }) as unknown as Standing;
const situation = {
  ...{ histories: 200, confidence: 0.9, remedies: null, ownsNoKit: true },
  tour: { days: 24 },
};

describe('firstKitOf()', () => {
  it('tells a rider who owns nothing what serves off the bicycle too', () => {
    const [said] = firstKitOf(best('bank', 'generator-hub', 'accessory'), situation);
    expect(said).toContain('the bank is useful on every train');
    expect(said).toContain('this bicycle only');
    expect(said).not.toContain('panel');
  });

  it('tells nothing to a rider who owns some of it, or buys nothing', () => {
    expect(firstKitOf(best('bank'), { ...situation, ownsNoKit: false })).toEqual([]);
    expect(firstKitOf(best(), situation)).toEqual([]);
  });
});
