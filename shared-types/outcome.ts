import type { z } from 'zod';

/**
 * How a call can fail in a way a person can act on. A bug is not one of these: it throws, is logged, and answers `internal`.
 * - bad-input: a field breaks its rule; `fields` says which and what is allowed
 * - unknown-call: no such call in the contract
 * - not-found: the id names nothing (any more)
 * - in-use: something else still needs the row
 * - too-large: more bytes than the call takes
 * - unreadable: a file is not what it should be; `message` says where it stops making sense
 * - storage: the catalogue could not be read or written
 * - cancelled: the rider stopped it
 * - forbidden: the sender is not this app's own window
 * - internal: a fault of ours
 */
export type ErrorCode =
  | 'bad-input'
  | 'unknown-call'
  | 'not-found'
  | 'in-use'
  | 'too-large'
  | 'unreadable'
  | 'storage'
  | 'cancelled'
  | 'forbidden'
  | 'internal';

/** One field in error: where (`item.massG`, `tour.legs.2.days`), what is allowed there, and what was given. */
export interface FieldError {
  readonly path: string;
  readonly allowed: string;
  readonly got: string;
}

export interface CallError {
  readonly code: ErrorCode;
  /** A sentence fit to show as it is. */
  readonly message: string;
  readonly fields: readonly FieldError[];
}

export type Outcome<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: CallError };

export function success<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

export function failure(
  code: ErrorCode,
  message: string,
  fields: readonly FieldError[] = [],
): { readonly ok: false; readonly error: CallError } {
  return { ok: false, error: { code, message, fields } };
}

/** The answer to a name that is not in the contract. */
export function unknownCall(name: unknown): ReturnType<typeof failure> {
  return failure('unknown-call', `There is no call named ${shown(name)}.`);
}

const longestEcho = 60;

/** What was given, as an error repeats it: the beginning of what is long. */
export function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return cut(JSON.stringify(value.slice(0, longestEcho)));
  // JSON has no NaN and no Infinity, and says null for both.
  return cut(typeof value === 'number' ? String(value) : (jsonOf(value) ?? typeof value));
}

/** Undefined where JSON has no word for a value, such as a group that holds itself or goes too deep. */
function jsonOf(value: unknown): string | undefined {
  try {
    return JSON.stringify(value);
  } catch {
    return undefined;
  }
}

function cut(text: string): string {
  return text.length > longestEcho ? `${text.slice(0, longestEcho)}…` : text;
}

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined,
    root,
  );
}

/** More fields in error than any form shows; the rest are counted. */
const mostFields = 1000;

/** Turns the issues of a failed parse of `input` into one `bad-input` error that names each field. */
export function badInput(
  error: z.ZodError,
  input: unknown,
): { readonly ok: false; readonly error: CallError } {
  const fields = error.issues.slice(0, mostFields).map((issue) => ({
    path: issue.path.join('.'),
    allowed:
      issue.code === 'unrecognized_keys' ? `no field named ${cut(issue.keys.join(', '))}` : issue.message,
    got: shown(valueAt(input, issue.path)),
  }));
  const [first] = fields;
  const where = first === undefined || first.path === '' ? 'The input' : first.path;
  const more = error.issues.length > 1 ? ` (and ${error.issues.length - 1} more)` : '';
  return failure('bad-input', `${where}: allowed is ${first?.allowed ?? 'another shape'}${more}.`, fields);
}
