import { appendFileSync } from 'node:fs';
import { expect } from 'vitest';

/** A file to which every check is written as it is made: test, what, expected, got, tolerance, parted by tabs. */
const listFile = process.env['CHARGEWRIGHT_LIST_CHECKS'];

/**
 * Fails unless `got` lies within `tolerance` of `expected`, both in the unit that `what` names ("lost, Wh").
 * A tolerance is absolute; for a relative one pass `share * Math.abs(expected)`.
 */
export function expectNear(got: number, expected: number, tolerance: number, what: string): void {
  const distance = Math.abs(got - expected);
  // Written this way round so that NaN on either side fails too; equal infinities pass.
  const near = got === expected || distance <= tolerance;
  if (listFile !== undefined) list(what, expected, got, tolerance);
  expect(near, `${what}: expected ${expected}, got ${got}, off by ${distance}, tolerance ${tolerance}`).toBe(
    true,
  );
}

function list(what: string, ...figures: readonly number[]): void {
  const test = expect.getState().currentTestName ?? '';
  const written = figures.map((figure) => Number(figure.toPrecision(7)));
  appendFileSync(listFile!, `${[test, what, ...written].join('\t')}\n`);
}
