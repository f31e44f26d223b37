import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { itemKinds, type ItemKind } from '../../../../shared-types/item.ts';
import { columnNames, columnsOfKind } from '../../../../src-main/catalogue/csv/columns.ts';

const kinds = Object.keys(itemKinds) as ItemKind[];

/** The fields that a schema has, forms of a field one beside the other, without what names the form. */
function pathsOf(schema: z.core.$ZodType, path: readonly string[] = []): string[] {
  if (schema instanceof z.ZodNullable) return pathsOf(schema.unwrap(), path);
  if (schema instanceof z.ZodDiscriminatedUnion)
    return schema.options.flatMap((option) => pathsOf(option, path));
  // Money is one amount in a CSV, in the currency of the settings.
  if (!(schema instanceof z.ZodObject) || 'minor' in schema.shape) return [path.join('.')];
  const shape: Record<string, z.core.$ZodType> = schema.shape;
  return Object.entries(shape).flatMap(([name, part]) =>
    name === 'as' ? [] : pathsOf(part, [...path, name]),
  );
}

describe('columnsOfKind', () => {
  it.each(kinds)('has a column for every field of a %s', (kind) => {
    const filled = Object.values(columnsOfKind[kind]).map((column) => column.path);
    expect(filled.sort()).toEqual(pathsOf(itemKinds[kind]).sort());
  });
});

describe('columnNames', () => {
  it('has each name once, in small letters with the unit', () => {
    expect(new Set(columnNames).size).toBe(columnNames.length);
    expect(columnNames.filter((name) => !/^[a-z][a-z0-9_]*$/.test(name))).toEqual([]);
  });
});
