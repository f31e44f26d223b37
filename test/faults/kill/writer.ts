import type { BuiltHost } from '../built-host.ts';
import type { Dice } from '../dice.ts';
import { RefusedChange, type Ledger } from './ledger.ts';

/** A rider at one page, who sends the next change as soon as the last was answered. */
export interface Writer {
  readonly host: BuiltHost;
  readonly ledger: Ledger;
  readonly dice: Dice;
}

/** One change, or none where there is nothing to change. */
export type Write = (writer: Writer) => Promise<unknown>;

/** Writes at random until the host is gone; what it refuses to store although it should take it. */
export async function writeUntilGone(writer: Writer, writes: readonly Write[]): Promise<readonly string[]> {
  try {
    for (;;) await writer.dice.oneOf(writes)(writer);
  } catch (thrown) {
    if (thrown instanceof RefusedChange) return [thrown.message];
    if (isHangUp(thrown)) return [];
    throw thrown;
  }
}

/** The connection ended before the answer did. */
function isHangUp(thrown: unknown): boolean {
  return (
    thrown instanceof Error &&
    'code' in thrown &&
    ['ECONNRESET', 'ECONNREFUSED', 'EPIPE'].includes(String(thrown.code))
  );
}

export function withoutId<Row extends { readonly id: string }>({ id, ...draft }: Row): Omit<Row, 'id'> {
  return draft;
}

export const idOfRow = ({ id }: { readonly id: string }): readonly string[] => [id];
export const idsOfRows = (rows: readonly { readonly id: string }[]): readonly string[] =>
  rows.map(({ id }) => id);
