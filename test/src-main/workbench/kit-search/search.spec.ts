import { describe, expect, it } from 'vitest';
import { noLimits } from '../../../../shared-types/limits.ts';
import { openedWorkbench } from '../../../support/open-workbench.ts';
import { crewHere } from '../../../support/crew-here.ts';
import type { Crew } from '../../../../src-main/workbench/crew.ts';

const request = {
  ...{ runId: 'spec', tourId: 'demo-tour', scenarioId: 'demo-banks' },
  choices: ['demo-cables', 'demo-panel-6', 'demo-bank-10'].map((itemId) => ({
    itemId,
    choice: 'not' as const,
  })),
  limits: noLimits,
};

/** The demo with few histories and long steps; the crew is told of each chunk of kits. */
async function workbench(onChunk: (chunk: number) => Promise<void> | void = () => undefined) {
  const here = crewHere();
  let chunks = 0;
  const crew: Crew = {
    ...here,
    start: (kind, inputs, watch) => {
      const run = here.start(kind, inputs, watch);
      const told = async () => {
        const results = await run.results;
        chunks += 1;
        await onChunk(chunks);
        return results;
      };
      return { results: told(), cancel: () => run.cancel() };
    },
  };
  const made = openedWorkbench({}, crew);
  const settings = await made.value('settings.get', {});
  await made.value('settings.save', {
    settings: { ...settings, stepMinutes: '60', sky: { ...settings.sky, histories: 20 } },
  });
  return made;
}

describe('kits.search', { timeout: 60_000 }, () => {
  it('finds kits that no other beats, the largest margin first', async () => {
    const { value } = await workbench();
    const result = await value('kits.search', request);
    expect(result).toMatchObject({ complete: true, histories: 20, confidence: 0.9, otherMoney: [] });
    const { kits, walked, idleItem, tooLittleSupply, stoppedEarly } = result.tally;
    expect(kits).toBe(32);
    expect(walked + idleItem + tooLittleSupply + stoppedEarly).toBe(kits);
    const margins = result.kits.map(({ margin }) => margin.value);
    expect(margins).toEqual(margins.toSorted((a, b) => b - a));
    // Nothing costs and weighs nothing: the empty kit is beaten by none.
    expect(result.kits.map(({ items }) => items.length)).toContain(0);
    expect(result.kits[0]!.items.map(({ label }) => label)).toContain('20 Ah bank, 18 W in');
  });

  it('keeps every kit within a limit on the margin', async () => {
    const { value } = await workbench();
    const { kits: all } = await value('kits.search', request);
    const { kits: some, complete } = await value('kits.search', {
      ...request,
      limits: { ...noLimits, margin: 0.12 },
    });
    expect(complete).toBe(true);
    expect(some).toEqual(all.filter(({ margin }) => margin.value >= 0.12));
    expect(some.length).toBeLessThan(all.length);
  });

  it('tells what it has found while it searches, and nothing of a search that is not', async () => {
    const seen: (number | null)[] = [];
    const { value } = await workbench(async (chunk) => {
      if (chunk > 1) return;
      const { result } = await value('kits.soFar', { runId: 'spec' });
      seen.push(result?.tally.walked ?? null);
    });
    await value('kits.search', request);
    expect(seen).toEqual([0]);
    expect(await value('kits.soFar', { runId: 'spec' })).toEqual({ result: null });
  });

  it('answers what it has when it is stopped, and says that it is not all', async () => {
    const many = { ...request, choices: [] };
    const { value, call } = await workbench(async (chunk) => {
      if (chunk === 2) await call('runs.cancel', { runId: 'spec' });
    });
    const result = await value('kits.search', many);
    expect(result.complete).toBe(false);
    expect(result.kits.length).toBeGreaterThan(0);
    const { kits, walked, tooLittleSupply, stoppedEarly, idleItem } = result.tally;
    expect(walked + tooLittleSupply + stoppedEarly + idleItem).toBeLessThan(kits);
    // It can be searched again under the same name.
    expect((await value('kits.search', request)).complete).toBe(true);
  });

  it('refuses a second search of the same name and lets the first go on', async () => {
    const { call, value } = await workbench();
    const first = value('kits.search', request);
    expect(await call('kits.search', request)).toMatchObject({ ok: false, error: { code: 'in-use' } });
    expect((await first).complete).toBe(true);
  });
});
