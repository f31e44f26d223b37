import Database from 'better-sqlite3';

/** Every row of every table by its name, and the step of the tables: equal where two catalogues hold the same. */
export interface CatalogueDump {
  readonly step: number;
  readonly tables: Readonly<Record<string, readonly unknown[]>>;
}

/** Reads a file that nothing else has open, whatever its step. */
export function dumpOf(file: string): CatalogueDump {
  const db = new Database(file);
  try {
    const named = db.prepare(
      "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%' ORDER BY name",
    );
    const rows = (name: string): unknown[] => db.prepare(`SELECT * FROM "${name}"`).all();
    const tables = (named.pluck().all() as string[]).map((name): [string, unknown[]] => [name, rows(name)]);
    return {
      step: db.pragma('user_version', { simple: true }) as number,
      tables: Object.fromEntries(tables),
    };
  } finally {
    db.close();
  }
}
