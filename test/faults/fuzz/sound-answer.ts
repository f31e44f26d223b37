import { expect } from 'vitest';
import type { CallError, ErrorCode, Outcome } from '../../../shared-types/outcome.ts';

/** Every code that input from outside may lead to; `internal` is a fault of ours. */
const expected: Readonly<Record<Exclude<ErrorCode, 'internal'>, true>> = {
  'bad-input': true,
  'unknown-call': true,
  'not-found': true,
  'in-use': true,
  'too-large': true,
  unreadable: true,
  storage: true,
  cancelled: true,
  forbidden: true,
};

/** More than a sentence with a few names in it takes. */
const longestMessage = 2000;
const longestField = 300;
/** How the library that checks schemas would put it. */
const notOurWords = /invalid|expected|received|undefined|too (big|small)|\bNaN\b|\[object/i;

/** What every answer must be that a host passes on: whole, in JSON, and if it is an error one that a person can act on. */
export function expectSound(outcome: Outcome<unknown>): void {
  JSON.stringify(outcome, onlyJson);
  if (outcome.ok) expect(outcome.value).toBeDefined();
  else expectActionable(outcome.error);
}

/** JSON would say null for a figure that is none, and the page would not know. */
function onlyJson(key: string, value: unknown): unknown {
  if (typeof value === 'number') expect(value, key).toSatisfy(Number.isFinite);
  return value;
}

function expectActionable({ code, message, fields }: CallError): void {
  expect(Object.keys(expected)).toContain(code);
  expect(message).toMatch(/^\S[^]*[.!?]$/);
  expect(message.length).toBeLessThan(longestMessage);
  for (const { path, allowed, got } of fields) {
    expect(path).toBeTypeOf('string');
    expect(allowed).toMatch(/\S/);
    expect(allowed).not.toMatch(notOurWords);
    expect(got).toMatch(/\S/);
    expect(allowed.length + got.length).toBeLessThan(longestField);
  }
}
