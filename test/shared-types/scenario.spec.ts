import { describe, expect, it } from 'vitest';
import { scenarioDraft, usualPlacement, usualRules } from '../../shared-types/scenario.ts';

describe('a usual scenario', () => {
  it('keeps the contract', () => {
    expect(scenarioDraft.shape.rules.safeParse(usualRules).success).toBe(true);
    expect(scenarioDraft.shape.placement.safeParse(usualPlacement).success).toBe(true);
  });
});
