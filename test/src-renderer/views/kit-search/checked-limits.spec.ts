import { describe, expect, it } from 'vitest';
import { noLimits } from '../../../../shared-types/limits.ts';
import { checkedLimits } from '../../../../src-renderer/views/kit-search/checked-limits.ts';

describe('checkedLimits()', () => {
  it('says where a limit is out of range, and what is allowed', () => {
    const outcome = checkedLimits({ ...noLimits, grams: -1 });
    expect(outcome).toMatchObject({ ok: false, error: { fields: [{ path: 'limits.grams' }] } });
    expect(!outcome.ok && outcome.error.fields[0]!.allowed).toContain('from 0 to');
  });

  it('takes none, and those in range', () => {
    expect(checkedLimits(noLimits).ok).toBe(true);
    expect(checkedLimits({ ...noLimits, toBuy: 200, margin: 0.1, byAir: true }).ok).toBe(true);
  });
});
