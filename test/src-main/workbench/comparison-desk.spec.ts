import { describe, expect, it } from 'vitest';
import { mostScenariosCompared } from '../../../shared-types/scenario.ts';
import { listScenarios, removeScenario, saveScenario } from '../../../src-main/catalogue/scenarios.ts';
import { saveSettings } from '../../../src-main/catalogue/settings.ts';
import { listTours, saveTour } from '../../../src-main/catalogue/tours.ts';
import { createComparisonDesk } from '../../../src-main/workbench/comparison-desk.ts';
import type { Crew, Watch } from '../../../src-main/workbench/crew.ts';
import type { ComparisonGround } from '../../../src-main/workbench/ground.ts';
import { jobHand, type JobInput, type JobKind, type JobOutput } from '../../../src-main/workbench/jobs.ts';
import { createRunBook } from '../../../src-main/workbench/run-book.ts';
import { fewHistories, withHistories } from '../../support/demo-ground.ts';
import { crewHere } from '../../support/crew-here.ts';
import { openedDemo } from '../catalogue/temporary-catalogue.ts';

/** A crew whose runs go on when the test says so. */
function heldCrew() {
  const here = crewHere();
  const runs: {
    readonly ground: ComparisonGround;
    readonly ids: readonly string[];
    readonly onProgress: (share: number) => void;
    readonly finish: () => void;
    readonly fail: (fault: Error) => void;
  }[] = [];
  const crew: Crew = {
    size: 1,
    start: <K extends JobKind>(kind: K, inputs: readonly JobInput<K>[], watch: Watch<JobOutput<K>>) => {
      // What is tried after the scenarios is done at once.
      if (kind !== 'scenario') return here.start(kind, inputs, watch);
      const { promise, resolve, reject } = Promise.withResolvers<readonly JobOutput<K>[] | null>();
      const doOrder = jobHand();
      const finish = (): void => resolve(inputs.map((input) => doOrder({ kind, input }, () => undefined)));
      const jobs = inputs as readonly JobInput<'scenario'>[];
      const ids = jobs.map(({ scenario }) => scenario.id);
      const { onProgress } = watch;
      runs.push({ ground: jobs[0]!.ground, ids, onProgress, finish, fail: reject });
      return { results: promise, cancel: () => resolve(null) };
    },
    close: () => undefined,
  };
  return { crew, runs };
}

function setup() {
  const catalogue = openedDemo();
  saveSettings(catalogue.write, withHistories(fewHistories));
  const held = heldCrew();
  const book = createRunBook();
  const desk = createComparisonDesk(catalogue, held.crew, book);
  return { catalogue, ...held, desk: { ...book, ...desk } };
}

const oneScenario = ['demo-banks'];

describe('a comparison desk', { timeout: 30_000 }, () => {
  it('knows no run that was never started', () => {
    const { desk } = setup();
    expect(desk.progress('a')).toBeNull();
    expect(desk.cancel('a')).toBe(false);
  });

  it.each([
    { what: 'tour', tourId: 'gone', scenarioIds: null, named: 'That tour is not in the catalogue' },
    {
      what: 'scenario',
      tourId: 'demo-tour',
      scenarioIds: ['demo-banks', 'gone'],
      named: 'The scenario gone is not in the catalogue',
    },
  ])('starts nothing for a $what that is not there', async ({ tourId, scenarioIds, named }) => {
    const { desk, runs } = setup();
    expect(await desk.run('a', tourId, scenarioIds)).toMatchObject({
      ...{ ok: false, error: { code: 'not-found', message: expect.stringContaining(named) as string } },
    });
    expect(runs).toEqual([]);
    expect(desk.progress('a')).toBeNull();
  });

  it('says that a run of that name is under way, and lets it be', async () => {
    const { desk, runs } = setup();
    const first = desk.run('a', 'demo-tour', oneScenario);
    expect(await desk.run('a', 'demo-tour', oneScenario)).toMatchObject({
      ...{
        ok: false,
        error: { code: 'in-use', message: expect.stringContaining('a is under way') as string },
      },
    });
    expect(runs).toHaveLength(1);
    runs[0]!.finish();
    expect(await first).toMatchObject({ ok: true });
  });

  it('answers `cancelled` when it is cancelled, and knows the run no more', async () => {
    const { desk } = setup();
    const run = desk.run('a', 'demo-tour', oneScenario);
    expect(desk.cancel('a')).toBe(true);
    expect(await run).toMatchObject({ ok: false, error: { code: 'cancelled', fields: [] } });
    expect(desk.progress('a')).toBeNull();
    expect(desk.cancel('a')).toBe(false);
  });

  it('passes on a fault, and can be asked again', async () => {
    const { desk, runs } = setup();
    const run = desk.run('a', 'demo-tour', oneScenario);
    runs[0]!.fail(new Error('A worker broke.'));
    await expect(run).rejects.toThrow('A worker broke.');
    expect(desk.progress('a')).toBeNull();
    const again = desk.run('a', 'demo-tour', oneScenario);
    runs[1]!.finish();
    expect(await again).toMatchObject({ ok: true });
  });

  it('knows how far each run is, and cancels the one named', async () => {
    const { desk, runs } = setup();
    const [a, b] = [desk.run('a', 'demo-tour', oneScenario), desk.run('b', 'demo-tour', oneScenario)];
    expect([desk.progress('a'), desk.progress('b')]).toEqual([0, 0]);
    runs[1]!.onProgress(0.4);
    expect([desk.progress('a'), desk.progress('b')]).toEqual([0, 0.4]);
    desk.cancel('a');
    runs[1]!.finish();
    expect(await a).toMatchObject({ ok: false });
    expect(await b).toMatchObject({ ok: true });
    // A late word of a run that is over is no run.
    runs[1]!.onProgress(0.9);
    expect(desk.progress('b')).toBeNull();
  });

  it('never hands two runs of one name to the workers as the same', async () => {
    const { desk, runs, catalogue } = setup();
    const [{ id, ...tour }] = listTours(catalogue.read) as [ReturnType<typeof listTours>[number]];
    const first = desk.run('a', id, oneScenario);
    runs[0]!.finish();
    await first;
    saveTour(catalogue.write, { ...tour, riderW: tour.riderW + 50 }, id);
    const second = desk.run('a', id, oneScenario);
    runs[1]!.finish();
    await second;
    expect(runs[1]!.ground.tour.riderW).toBe(tour.riderW + 50);
    expect(runs[1]!.ground.groundId).not.toBe(runs[0]!.ground.groundId);
  });

  it('takes all scenarios up to the most one comparison takes', () => {
    const { desk, runs, catalogue } = setup();
    const [{ id: _, ...draft }] = listScenarios(catalogue.read) as [ReturnType<typeof listScenarios>[number]];
    for (let more = 0; more < mostScenariosCompared; more += 1)
      saveScenario(catalogue.write, { ...draft, label: `More ${more}` });
    void desk.run('a', 'demo-tour', null);
    expect(runs[0]!.ids).toHaveLength(mostScenariosCompared);
    desk.cancel('a');
  });

  it('compares nothing where there is nothing to compare', async () => {
    const { catalogue } = setup();
    for (const { id } of listScenarios(catalogue.read)) removeScenario(catalogue.write, id);
    const desk = createComparisonDesk(catalogue, crewHere(), createRunBook());
    const outcome = await desk.run('a', 'demo-tour', null);
    expect(outcome).toMatchObject({ ok: true, value: { scenarios: [], scores: [] } });
  });
});
