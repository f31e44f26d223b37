import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { climateCredit, climateSources } from '../../../src-main/catalogue/climate-credit.ts';

const folder = resolve(import.meta.dirname, '../../../db/climate');
const notes = readFileSync(resolve(folder, 'NOTES.md'), 'utf8');
const table = readFileSync(resolve(folder, 'stations.csv'), 'utf8');

/** `sun=WW2016-monthly; temp=WW2016; pos=ISD-014920` names three. */
function codesInTable(): string[] {
  return [...new Set([...table.matchAll(/(?:sun|temp|pos)=([^;\r\n]+)/g)].map(([, code = '']) => code))];
}

describe('climateCredit', () => {
  it('credits the sources as their terms ask', () => {
    for (const source of ['Wikipedia contributors, CC BY-SA', 'NOAA', 'DSSAT'])
      expect(climateCredit).toContain(source);
  });
});

describe('climateSources', () => {
  it('explain every code that the table uses', () => {
    const unexplained = codesInTable().filter(
      (used) => !climateSources.some(({ code }) => used === code || used.startsWith(`${code}-`)),
    );
    // Alice Springs and Whitehorse have no temperatures, hence no source of them.
    expect(unexplained).toEqual(['none']);
  });

  it('have no code that the table does not use', () => {
    const used = codesInTable();
    const unused = climateSources.filter(({ code }) => !used.some((each) => each.startsWith(code)));
    expect(unused).toEqual([]);
  });

  it('stand in the notes beside the table too', () => {
    const absent = climateSources.filter(({ code }) => !notes.includes(`| ${code}`));
    expect(absent).toEqual([]);
  });

  it('say in whole sentences what each is', () => {
    for (const { what } of climateSources) expect(what).toMatch(/^[A-Z][^\n]{20,}\.$/);
  });
});
