import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CallName, CallResult } from '../../../shared-types/contract.ts';
import type { ExchangeTaking } from '../../../shared-types/exchange.ts';
import type { Outcome } from '../../../shared-types/outcome.ts';
import { caseBook } from './case-book.ts';
import { openFuzzed, type FuzzedWorkbench } from './fuzzed-workbench.ts';
import { anyMoves, type PageView } from './moves.ts';
import { tryCases } from './seeds.ts';

type Listed = Pick<PageView, 'items' | 'tours' | 'scenarios' | 'readingIds' | 'settings'>;

/** Every list there is, each of which must be answered whatever was done before. */
async function listed({ ask }: FuzzedWorkbench): Promise<Listed> {
  const value = async <N extends CallName>(name: N): Promise<CallResult<N>> => {
    const outcome = await ask(name, {});
    expect(outcome).toMatchObject({ ok: true });
    return (outcome as Extract<typeof outcome, { ok: true }>).value as CallResult<N>;
  };
  const [items, tours, scenarios] = [
    await value('items.list'),
    await value('tours.list'),
    await value('scenarios.list'),
  ];
  const { readings } = await value('readings.log');
  await value('items.csvColumns');
  return {
    items,
    tours,
    scenarios,
    settings: await value('settings.get'),
    readingIds: readings.map(({ id }) => id),
  };
}

/** The catalogue as one file, which says of itself that nothing would change. */
async function savedFile({ ask, saved }: FuzzedWorkbench): Promise<string> {
  expect(await ask('exchange.save', {})).toMatchObject({ ok: true });
  const text = new TextDecoder().decode(saved.at(-1)!.bytes);
  const preview = await ask('exchange.preview', { text });
  expect(preview).toMatchObject({ ok: true });
  const { entries } = (preview as { readonly value: CallResult<'exchange.preview'> }).value;
  expect(entries.filter(({ fate }) => fate !== 'same')).toEqual([]);
  return text;
}

function formerOf(call: CallName, outcome: Outcome<unknown>, before: PageView['former']): PageView['former'] {
  return call === 'exchange.take' && outcome.ok ? (outcome.value as ExchangeTaking).former : before;
}

describe('calls in any order on one catalogue', () => {
  const book = caseBook('sequences');
  it('leave it sound, every list readable and its file the same as itself', async () => {
    const workbench = await openFuzzed(book);
    const { ask, tables } = workbench;
    await tryCases(
      fc.asyncProperty(anyMoves, async (moves) => {
        book.count();
        tables.restore();
        const start = await listed(workbench);
        let view: PageView = {
          ...start,
          seen: start.items,
          files: [await savedFile(workbench)],
          former: null,
        };
        for (const { call, inputFor } of moves) {
          const outcome = await ask(call, inputFor(view));
          expect(tables.faults()).toEqual([]);
          const now = await listed(workbench);
          const news = now.items.filter(({ id }) => view.seen.every((item) => item.id !== id));
          view = {
            ...now,
            seen: [...view.seen, ...news],
            files: view.files.length < 3 ? [...view.files, await savedFile(workbench)] : view.files,
            former: formerOf(call, outcome, view.former),
          };
        }
        await savedFile(workbench);
      }),
      12,
      400,
    );
  });
});
