import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CallResult } from '../../../shared-types/contract.ts';
import type { Outcome } from '../../../shared-types/outcome.ts';
import { caseBook } from './case-book.ts';
import { anyCatalogueFile, greatCatalogueFiles } from './catalogue-files.ts';
import { openFuzzed, type FuzzedWorkbench } from './fuzzed-workbench.ts';
import { tryCases } from './seeds.ts';

type Preview = CallResult<'exchange.preview'>;
type Taking = CallResult<'exchange.take'>;

const valueOf = (outcome: Outcome<unknown>): unknown => (outcome.ok ? outcome.value : null);

async function savedText({ ask, saved }: FuzzedWorkbench): Promise<string> {
  await ask('exchange.save', {});
  return new TextDecoder().decode(saved.at(-1)!.bytes);
}

/** Takes a file as a whole, or all of it that is not refused; null where it is no catalogue file. */
async function taken(
  { ask }: FuzzedWorkbench,
  text: string,
  passOverRefused: boolean,
): Promise<Taking | null> {
  const outcome = await ask('exchange.take', { text, leaveOut: [], passOverRefused, settings: true });
  return valueOf(outcome) as Taking | null;
}

/** A taking is as the preview said, can be taken back, and then every row is as it was. */
async function expectThereAndBack(workbench: FuzzedWorkbench, text: string): Promise<void> {
  const { ask, tables } = workbench;
  const before = tables.rows();
  const preview = valueOf(await ask('exchange.preview', { text })) as Preview | null;
  const fates = preview?.entries.map(({ fate }) => fate) ?? [];
  for (const passOverRefused of [false, true]) {
    const taking = await taken(workbench, text, passOverRefused);
    expect(taking === null).toBe(preview === null);
    if (taking === null || taking.former === null) {
      expect(tables.rows() === before).toBe(true);
      continue;
    }
    expect(taking.added).toBe(fates.filter((fate) => fate === 'new').length);
    expect(taking.changed).toBe(fates.filter((fate) => fate === 'changed').length);
    expect(tables.faults()).toEqual([]);
    expect(await ask('exchange.takeBack', taking.former)).toMatchObject({ ok: true });
    expect(tables.rows()).toBe(before);
  }
}

describe('a catalogue file, whatever it holds', () => {
  const book = caseBook('catalogue files');
  it('is taken whole, in part or not at all, and taken back without a trace', async () => {
    const workbench = await openFuzzed(book);
    const known = [await savedText(workbench)];
    await tryCases(
      fc.asyncProperty(anyCatalogueFile(known), async (text) => {
        book.count();
        workbench.tables.restore();
        await expectThereAndBack(workbench, text);
      }),
      30,
      1300,
    );
  });

  it.each(greatCatalogueFiles)('is done with in time: $what', async ({ text }) => {
    book.count();
    const { ask } = await openFuzzed(book);
    await ask('exchange.preview', { text: text() });
  });
});
