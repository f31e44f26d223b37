import { isDeepStrictEqual } from 'node:util';
import type { Outcome } from '../../../shared-types/outcome.ts';
import type { StoredRow } from './stored-rows.ts';

/** What a call does to the rows it names: each gets the draft beside it, or goes where that is null. */
export type Change = ReadonlyMap<string, unknown>;

export interface LedgerCount {
  /** Changes whose answers reached the rider. */
  acknowledged: number;
  /** Rows of those. */
  acknowledgedRows: number;
  /** Changes under way at a kill that were found whole afterwards, and those that were found not at all. */
  whole: number;
  absent: number;
}

/** What a rider may rely on: every acknowledged change, and of those under way each as a whole or not at all. */
export class Ledger {
  readonly count: LedgerCount = { acknowledged: 0, acknowledgedRows: 0, whole: 0, absent: 0 };
  readonly #underWay = new Set<Change>();
  readonly #ids = new Map<string, string>();
  #kept: Map<string, unknown>;
  #named = 0;

  constructor(found: ReadonlyMap<string, StoredRow>) {
    this.#kept = new Map();
    this.#takeOver(found);
  }

  /** The keys of kept rows that begin like this. */
  keysFrom(start: string): readonly string[] {
    return [...this.#kept.keys()].filter((key) => key.startsWith(start));
  }

  draftOf(key: string): unknown {
    return this.#kept.get(key);
  }

  idOf(key: string): string {
    return this.#ids.get(key)!;
  }

  /** A name that no row has or had. */
  newName(start: string): string {
    this.#named += 1;
    return `${start} ${this.#named}`;
  }

  /** Sends a change; kept from its answer on. Rejects where the host ends first, or refuses it. */
  async send<T>(
    change: Change,
    call: Promise<Outcome<T>>,
    idsIn: (value: T) => readonly string[],
  ): Promise<T> {
    this.#underWay.add(change);
    const outcome = await call;
    if (!outcome.ok) throw new RefusedChange(`${[...change.keys()].join(', ')}: ${outcome.error.message}`);
    this.#underWay.delete(change);
    this.#keep(change, idsIn(outcome.value));
    return outcome.value;
  }

  #keep(change: Change, ids: readonly string[]): void {
    this.count.acknowledged += 1;
    this.count.acknowledgedRows += change.size;
    [...change].forEach(([key, draft], place) => {
      if (draft === null) this.#kept.delete(key);
      else this.#kept.set(key, draft);
      const id = ids[place];
      if (id !== undefined) this.#ids.set(key, id);
    });
  }

  /** What a host that was started anew does not have as it must; what it has is what is kept from then on. */
  settle(found: ReadonlyMap<string, StoredRow>): readonly string[] {
    const faults = [...this.#underWay].flatMap((change) => this.#settleChange(change, found));
    const keys = new Set([...this.#kept.keys(), ...found.keys()]);
    for (const key of keys) {
      const [kept, now] = [this.#kept.get(key) ?? null, found.get(key)?.draft ?? null];
      if (!isDeepStrictEqual(kept, now)) faults.push(`${key}: lost ${said(kept)}, found ${said(now)}`);
    }
    this.#underWay.clear();
    this.#takeOver(found);
    return faults;
  }

  #settleChange(change: Change, found: ReadonlyMap<string, StoredRow>): string[] {
    const isThere = (wanted: (key: string, draft: unknown) => unknown): boolean =>
      [...change].every(([key, draft]) =>
        isDeepStrictEqual(wanted(key, draft) ?? null, found.get(key)?.draft ?? null),
      );
    if (isThere((_, draft) => draft)) {
      this.count.whole += 1;
      for (const [key, draft] of change) this.#kept.set(key, draft);
      return [];
    }
    this.count.absent += 1;
    return isThere((key) => this.#kept.get(key)) ? [] : [`in part: ${[...change.keys()].join(', ')}`];
  }

  #takeOver(found: ReadonlyMap<string, StoredRow>): void {
    this.#kept = new Map([...found].map(([key, { draft }]) => [key, draft]));
    for (const [key, { id }] of found) this.#ids.set(key, id);
  }
}

/** The host is alive and would not take a change that it should take. */
export class RefusedChange extends Error {}

function said(draft: unknown): string {
  return JSON.stringify(draft).slice(0, 300);
}
