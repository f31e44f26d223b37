import { expect } from 'vitest';

/**
 * Fails unless `got` lies within `tolerance` of `expected`, both in the unit that `what` names ("lost, Wh").
 * A tolerance is absolute; for a relative one pass `share * Math.abs(expected)`.
 */
export function expectNear(got: number, expected: number, tolerance: number, what: string): void {
  const distance = Math.abs(got - expected);
  // Written this way round so that NaN on either side fails too; equal infinities pass.
  const near = got === expected || distance <= tolerance;
  expect(near, `${what}: expected ${expected}, got ${got}, off by ${distance}, tolerance ${tolerance}`).toBe(
    true,
  );
}
