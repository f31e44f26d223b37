import { BroadcastChannel } from 'node:worker_threads';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it, onTestFinished } from 'vitest';
import { demoScenarios } from '../../../db/demo/demo.ts';
import type { ScenarioResult } from '../../../shared-types/comparison.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import type { Crew, CrewRun } from '../../../src-main/workbench/crew.ts';
import type { ComparisonGround } from '../../../src-main/workbench/ground.ts';
import { jobHand } from '../../../src-main/workbench/jobs.ts';
import { createWorkerPool } from '../../../src-main/workers/worker-pool.ts';
import { demoGround, demoScenario, withHistories } from '../../support/demo-ground.ts';

const workerFile = new URL('../../../src-main/workers/worker.ts', import.meta.url);
const stubFile = new URL('../../support/stub-worker.ts', import.meta.url);
const ignore = (): void => undefined;

/** A pool of two workers, closed when the test ends. */
function pool(file: URL = workerFile, size = 2): Crew {
  const made = createWorkerPool(file, size);
  onTestFinished(() => made.close());
  return made;
}

/** What the scenarios give when they are simulated in this thread. */
function simulatedHere(ground: ComparisonGround): readonly ScenarioResult[] {
  const doOrder = jobHand();
  return demoScenarios.map((scenario) => doOrder({ kind: 'scenario', input: { ground, scenario } }, ignore));
}

/** Has a crew simulate scenarios on a ground. */
function start(
  crew: Crew,
  ground: ComparisonGround,
  scenarios: readonly Scenario[],
  onProgress: (share: number) => void = ignore,
): CrewRun<ScenarioResult> {
  const inputs = scenarios.map((scenario) => ({ ground, scenario }));
  return crew.start('scenario', inputs, { onProgress });
}

/** Longer than anybody waits: a year in steps of five minutes, a thousand times. */
function longGround(): ComparisonGround {
  const ground = demoGround();
  const leg = ground.tour.legs[0]!;
  const tour: Tour = { ...ground.tour, legs: [{ ...leg, days: 366 }] };
  return { ...ground, tour, settings: { ...withHistories(1000), stepMinutes: '5' } };
}

/** A stub's job does as the label says. */
const told = (label: string) => ({ ...demoScenario('demo-banks'), label, id: `id of ${label}` });

describe('createWorkerPool()', { timeout: 30_000 }, () => {
  it('rejects with the message of a worker that can not start', async () => {
    const run = start(pool(new URL('gone.ts', import.meta.url)), demoGround(), [told('a')]);
    await expect(run.results).rejects.toThrow('gone.ts');
  });

  it('rejects with the message of a fault in a worker, and goes on', async () => {
    const stubs = pool(stubFile);
    const faulty = start(stubs, demoGround(), [told('a'), told('throw'), told('b')]);
    await expect(faulty.results).rejects.toThrow('The stub was told to throw.');
    const next = await start(stubs, demoGround(), [told('c'), told('d'), told('e')]).results;
    expect(next!.map(({ id }) => id)).toEqual(['id of c', 'id of d', 'id of e']);
  });

  it('leaves another run alone when one has a fault or is cancelled', async () => {
    const stubs = pool(stubFile, 3);
    const faulty = start(stubs, demoGround(), [told('throw')]);
    const cancelled = start(stubs, demoGround(), [told('hang')]);
    const other = start(stubs, demoGround({ groundId: 'other' }), [told('a'), told('b')]);
    cancelled.cancel();
    await expect(faulty.results).rejects.toThrow();
    expect(await cancelled.results).toBeNull();
    expect((await other.results)!.map(({ label }) => label)).toEqual(['a of other', 'b of other']);
  });

  it('names the leg whose station is not known', async () => {
    const run = start(pool(), demoGround({ stations: [] }), demoScenarios);
    await expect(run.results).rejects.toThrow('Leg 1 names a climate station');
  });

  it('gives what this thread gives, in the order of the scenarios', async () => {
    const ground = demoGround();
    const expected = simulatedHere(ground);
    const shared = pool();
    expect(await start(shared, ground, demoScenarios).results).toEqual(expected);
    const turned = await start(shared, ground, demoScenarios.toReversed()).results;
    expect(turned).toEqual(expected.toReversed());
  });

  it('does more scenarios than it has workers, and none', async () => {
    const labels = ['a', 'b', 'c', 'd', 'e'];
    const stubs = pool(stubFile);
    const results = await start(stubs, demoGround(), labels.map(told)).results;
    expect(results!.map(({ id }) => id)).toEqual(labels.map((label) => `id of ${label}`));
    expect(await start(stubs, demoGround(), []).results).toEqual([]);
  });

  it('keeps two runs apart that are under way at a time', async () => {
    const shared = pool();
    const one = demoGround({ groundId: 'one' });
    const other = demoGround({ groundId: 'other', settings: withHistories(40) });
    const runs = [one, other].map((ground) => start(shared, ground, demoScenarios).results);
    expect(await Promise.all(runs)).toEqual([simulatedHere(one), simulatedHere(other)]);
  });

  it('says how far a run is, from above 0 to 1 and never less than before', async () => {
    const shares: number[] = [];
    await start(pool(), demoGround(), demoScenarios, (share) => shares.push(share)).results;
    expect(shares[0]).toBeGreaterThan(0);
    expect(shares[0]).toBeLessThan(0.5);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    // Told often enough for a bar that moves.
    expect(new Set(shares).size).toBeGreaterThan(2 * demoScenarios.length);
  });

  it('drops a long run at once when it is cancelled, and works on', async () => {
    const shared = pool();
    const run = start(shared, longGround(), demoScenarios);
    await pause(1000);
    const cancelledAt = performance.now();
    run.cancel();
    expect(await run.results).toBeNull();
    expect(performance.now() - cancelledAt).toBeLessThan(2000);
    const ground = demoGround({ groundId: 'after' });
    expect(await start(shared, ground, demoScenarios).results).toEqual(simulatedHere(ground));
  });

  it('ends a worker that never answers, and stays cancelled when it is cancelled again', async () => {
    const stubs = pool(stubFile, 1);
    const run = start(stubs, demoGround(), [told('hang'), told('a')]);
    run.cancel();
    run.cancel();
    expect(await run.results).toBeNull();
    expect(await start(stubs, demoGround(), [told('b')]).results).toHaveLength(1);
  });

  it('leaves the results of a finished run as they are when it is cancelled', async () => {
    const run = start(pool(stubFile), demoGround(), [told('a')]);
    await run.results;
    run.cancel();
    expect(await run.results).toHaveLength(1);
  });
});

describe('closing a pool', () => {
  it('ends all its threads, idle and busy, and the runs under way', async () => {
    const stubs = createWorkerPool(stubFile, 2);
    const channel = new BroadcastChannel('stub-workers');
    onTestFinished(() => channel.close());
    await start(stubs, demoGround(), [told('a'), told('b')]).results;
    const hanging = start(stubs, demoGround(), [told('hang')]);
    const alive = new Set<unknown>();
    channel.onmessage = (event) => void alive.add((event as unknown as MessageEvent<number>).data);
    await expect.poll(() => alive.size).toBe(2);
    stubs.close();
    expect(await hanging.results).toBeNull();
    await pause(200);
    alive.clear();
    await pause(100);
    expect([...alive]).toEqual([]);
  });
});
