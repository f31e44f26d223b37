import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { migrations } from '../../../src-main/catalogue/migrations.ts';

const folder = resolve(import.meta.dirname, '../../../db/migrations');

describe('migrations', () => {
  it('lists every file of the folder in its order', () => {
    const files = readdirSync(folder).sort();
    expect(migrations.map((step) => step.sql)).toEqual(
      files.map((file) => readFileSync(resolve(folder, file), 'utf8')),
    );
  });

  it('takes the version from the number of the file', () => {
    const numbers = readdirSync(folder)
      .sort()
      .map((file) => Number.parseInt(file, 10));
    expect(migrations.map((step) => step.version)).toEqual(numbers);
  });

  it('counts in tens, so that steps fit between', () => {
    expect(migrations.map((step, index) => step.version - 10 * (index + 1))).toEqual(migrations.map(() => 0));
  });
});
