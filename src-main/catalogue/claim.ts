import Database from 'better-sqlite3';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';

/** Whether this program has a data folder for itself. */
export type FolderClaim =
  | { readonly as: 'ours'; release(): void }
  /** `holder`: what the program that has it says of itself; null where that can't be read. */
  | { readonly as: 'taken'; readonly holder: string | null };

const claimFile = 'in-use.lock';

/** What a rider keeps is nobody else's on a computer that several use. */
const ownerOnly = 0o700;

/** Another start may be writing its words just now; more would only be waited for in vain. */
const waitMs = 500;

/** A connection that nobody holds on to is closed with its lock when memory is tidied. */
const held = new Set<Database.Database>();

/**
 * Claims a data folder until the claim is released or the program ends, however it ends: the lock is SQLite's, so the system
 * takes it back, and no process number that belongs to another by now can be mistaken for the holder. A folder in which
 * nothing can be written can't be guarded and counts as ours: opening the catalogue tells what is wrong.
 *
 * @param holder what a second start shows its rider
 */
export function claimFolder(folder: string, holder: string): FolderClaim {
  try {
    mkdirSync(folder, { recursive: true, mode: ownerOnly });
    return claim(new Database(join(folder, claimFile), { timeout: waitMs }), holder);
  } catch (thrown) {
    if (thrown instanceof Error && 'code' in thrown) return { as: 'ours', release: () => undefined };
    throw thrown;
  }
}

function claim(db: Database.Database, holder: string): FolderClaim {
  try {
    db.exec('BEGIN IMMEDIATE');
    db.exec('CREATE TABLE IF NOT EXISTS holder (words TEXT NOT NULL) STRICT; DELETE FROM holder');
    db.prepare('INSERT INTO holder VALUES (?)').run(holder);
    // What others are to read must be committed; the lock is held by a transaction that never ends.
    db.exec('COMMIT; BEGIN IMMEDIATE');
    held.add(db);
    return { as: 'ours', release: () => release(db) };
  } catch (thrown) {
    const taken = isBusy(thrown);
    const words = taken ? holderOf(db) : null;
    db.close();
    if (taken) return { as: 'taken', holder: words };
    throw thrown;
  }
}

function release(db: Database.Database): void {
  held.delete(db);
  db.close();
}

function isBusy(thrown: unknown): boolean {
  return thrown instanceof Database.SqliteError && thrown.code.startsWith('SQLITE_BUSY');
}

/** A lock that only keeps others from writing lets them read who holds it. */
function holderOf(db: Database.Database): string | null {
  try {
    return (db.prepare('SELECT words FROM holder').pluck().get() as string | undefined) ?? null;
  } catch {
    return null;
  }
}
