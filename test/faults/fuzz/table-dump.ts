import Database from 'better-sqlite3';

/** Looks at a catalogue from outside, row by row, and puts it back as it was. */
export interface TableDump {
  /** Every row of every table, in one text. */
  rows(): string;
  /** What SQLite's own checks find wrong. */
  faults(): readonly string[];
  /** Makes every row as it was when this began. */
  restore(): void;
  close(): void;
}

export function openTableDump(file: string, copy: string): TableDump {
  const db = new Database(file);
  db.pragma('synchronous = OFF');
  db.prepare('VACUUM INTO ?').run(copy);
  db.prepare('ATTACH ? AS former').run(copy);
  const tables = db
    .prepare(
      "SELECT name FROM main.sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name",
    )
    .pluck()
    .all() as string[];
  /** Changes with every commit of another connection. */
  const version = (): number => db.pragma('main.data_version', { simple: true }) as number;
  let known = { version: version(), rows: dumped(db, tables) };
  const first = known.rows;
  return {
    rows: () => {
      if (version() !== known.version) known = { version: version(), rows: dumped(db, tables) };
      return known.rows;
    },
    faults: () => faultsOf(db),
    restore: () => {
      if (version() === known.version && known.rows === first) return;
      putBack(db, tables);
      known = { version: version(), rows: first };
    },
    close: () => db.close(),
  };
}

function dumped(db: Database.Database, tables: readonly string[]): string {
  const lines = tables.flatMap((table) => {
    const rows = db.prepare(`SELECT * FROM main.${table}`).raw().all();
    return rows.map((row) => `${table} ${JSON.stringify(row)}`);
  });
  return lines.sort().join('\n');
}

function putBack(db: Database.Database, tables: readonly string[]): void {
  db.pragma('foreign_keys = OFF');
  db.transaction(() => {
    for (const table of tables) db.exec(`DELETE FROM main.${table}`);
    for (const table of tables) db.exec(`INSERT INTO main.${table} SELECT * FROM former.${table}`);
  }).immediate();
}

function faultsOf(db: Database.Database): readonly string[] {
  const integrity = db.prepare('PRAGMA main.integrity_check').pluck().all() as string[];
  const broken = db.pragma('main.foreign_key_check') as unknown[];
  return [...integrity.filter((line) => line !== 'ok'), ...broken.map((row) => JSON.stringify(row))];
}
