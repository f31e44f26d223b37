import type { Statement } from 'better-sqlite3';
import { refuseMoved, type ReadDb, type WriteDb } from './connection.ts';

export type SqlValue = string | number | null;

/** A row to be stored: column name and value. Table and column names come from this code, never from outside. */
export type SqlRow = Readonly<Record<string, SqlValue>>;

/** Preparing costs more than running here: a list of items asks the same few questions for each one. */
const prepared = new WeakMap<ReadDb, Map<string, Statement<SqlValue[]>>>();

function statement(db: ReadDb, sql: string): Statement<SqlValue[]> {
  const known = prepared.get(db) ?? new Map<string, Statement<SqlValue[]>>();
  prepared.set(db, known);
  const found = known.get(sql) ?? db.prepare<SqlValue[]>(sql);
  known.set(sql, found);
  return found;
}

export function selectAll(db: ReadDb, sql: string, ...values: SqlValue[]): unknown[] {
  return statement(db, sql).all(...values);
}

/** The first row, or undefined when there is none. */
export function selectOne(db: ReadDb, sql: string, ...values: SqlValue[]): unknown {
  return statement(db, sql).get(...values);
}

/** Runs a statement that changes rows, and tells how many. */
export function change(db: WriteDb, sql: string, ...values: SqlValue[]): number {
  if (!db.inTransaction) refuseMoved(db);
  return statement(db, sql).run(...values).changes;
}

function insertSql(table: string, row: SqlRow): string {
  const columns = Object.keys(row);
  return `INSERT INTO ${table} (${columns.join(', ')}) VALUES (${columns.map(() => '?').join(', ')})`;
}

export function insertRow(db: WriteDb, table: string, row: SqlRow): void {
  change(db, insertSql(table, row), ...Object.values(row));
}

/** Replaces the row in place. Removing and adding it instead would set off the ON DELETE rules of what refers to it. */
export function putRow(db: WriteDb, table: string, key: string, row: SqlRow): void {
  const others = Object.keys(row).filter((column) => column !== key);
  const updates = others.map((column) => `${column} = excluded.${column}`);
  const sql = `${insertSql(table, row)} ON CONFLICT (${key}) DO UPDATE SET ${updates.join(', ')}`;
  change(db, sql, ...Object.values(row));
}

/** The row that must be there because another row says so. */
export function selectOwned(db: ReadDb, sql: string, ...values: SqlValue[]): unknown {
  const row = selectOne(db, sql, ...values);
  if (row === undefined) throw new Error(`The catalogue misses a row: ${sql} (${values.join(', ')})`);
  return row;
}
