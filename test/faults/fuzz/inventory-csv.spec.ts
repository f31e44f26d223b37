import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CallResult } from '../../../shared-types/contract.ts';
import { caseBook } from './case-book.ts';
import { anyCsv, greatCsvs } from './csv-files.ts';
import { openFuzzed, type FuzzedWorkbench } from './fuzzed-workbench.ts';
import { tryCases } from './seeds.ts';

const longestProblem = 600;

async function readCsv({ ask }: FuzzedWorkbench, text: string): Promise<CallResult<'items.readCsv'>> {
  const outcome = await ask('items.readCsv', { text });
  expect(outcome).toMatchObject({ ok: true });
  const reading = (outcome as { readonly value: CallResult<'items.readCsv'> }).value;
  for (const { line, message } of reading.problems) {
    expect(line).toBeGreaterThanOrEqual(1);
    expect(message).toMatch(/^\S[^]*\.$/);
    if (line > 1) expect(message.length).toBeLessThan(longestProblem);
  }
  return reading;
}

async function added({ ask }: FuzzedWorkbench, text: string, passOverErrors: boolean): Promise<number> {
  const outcome = await ask('items.addCsv', { text, leaveOut: [], passOverErrors });
  expect(outcome).toMatchObject({ ok: true });
  return (outcome as { readonly value: CallResult<'items.addCsv'> }).value.added.length;
}

describe('an inventory CSV, whatever it holds', () => {
  const book = caseBook('inventory CSVs');
  it('is read in part or told what is wrong, and adds all its good lines or none', async () => {
    const workbench = await openFuzzed(book);
    const { tables } = workbench;
    await tryCases(
      fc.asyncProperty(anyCsv, async (text) => {
        book.count();
        tables.restore();
        const before = tables.rows();
        const { lines, problems } = await readCsv(workbench, text);
        expect(await added(workbench, text, false)).toBe(problems.length === 0 ? lines.length : 0);
        if (problems.length > 0) expect(tables.rows() === before).toBe(true);
        tables.restore();
        expect(await added(workbench, text, true)).toBe(lines.length);
        expect(tables.faults()).toEqual([]);
      }),
      60,
      1500,
    );
  });

  it.each(greatCsvs)('is done with in time: $what', async ({ text }) => {
    book.count();
    const workbench = await openFuzzed(book);
    const { lines } = await readCsv(workbench, text());
    expect(await added(workbench, text(), true)).toBe(lines.length);
  });
});
