import { describe, expect, it } from 'vitest';
import type { Crew } from '../../../../src-main/workbench/crew.ts';
import { demoSettings, demoTours } from '../../../../db/demo/demo.ts';
import { crewHere } from '../../../support/crew-here.ts';
import { withHistories } from '../../../support/demo-ground.ts';
import { openedWorkbench, type TestWorkbench } from '../../../support/open-workbench.ts';

const { preferences } = demoSettings;
const all = { runId: 'spec', tourId: 'demo-tour', scenarioIds: null, preferences };

interface Watched {
  readonly crew: Crew;
  /** How many jobs each start was given. */
  readonly jobs: number[];
  /** Called at each start. */
  onStart: () => void;
}

function watchedCrew(): Watched {
  const here = crewHere();
  const watched: Watched = {
    jobs: [],
    onStart: () => undefined,
    crew: {
      ...here,
      start: (kind, inputs, watch) => {
        watched.jobs.push(inputs.length);
        watched.onStart();
        return here.start(kind, inputs, watch);
      },
    },
  };
  return watched;
}

/** A week of the demo with few histories in long steps. */
async function quick(crew?: Crew): Promise<TestWorkbench> {
  const workbench = openedWorkbench({}, crew);
  await workbench.value('settings.save', { settings: { ...withHistories(20), stepMinutes: '60' } });
  const { id, ...tour } = demoTours[0]!;
  const [hills, , steppe] = tour.legs;
  const legs = [
    { ...hills!, days: 3 },
    { ...steppe!, days: 4 },
  ];
  await workbench.value('tours.save', { id, tour: { ...tour, legs } });
  return workbench;
}

describe('outlook.swings', { timeout: 60_000 }, () => {
  it('refuses a tour and a scenario that are not there, and one scenario alone', async () => {
    const { call } = openedWorkbench();
    const code = async (change: Partial<typeof all> | { readonly scenarioIds: string[] }) => {
      const outcome = await call('outlook.swings', { ...all, ...change });
      return outcome.ok ? null : outcome.error.code;
    };
    expect(await code({ tourId: 'gone' })).toBe('not-found');
    expect(await code({ scenarioIds: ['demo-hub', 'gone'] })).toBe('not-found');
    expect(await code({ scenarioIds: ['demo-hub'] })).toBe('bad-input');
  });

  it('says why it has nothing to find where limits leave out all', async () => {
    const { call } = await quick();
    const limited = { ...preferences, limits: { ...preferences.limits, grams: 1 } };
    expect(await call('outlook.swings', { ...all, preferences: limited })).toMatchObject({
      ok: false,
      error: {
        code: 'bad-input',
        message: expect.stringContaining('limits leave out every scenario') as string,
      },
    });
  });

  it('moves every assumption, from the lead that the comparison has, and walks nothing twice', async () => {
    const { crew, jobs } = watchedCrew();
    const { value } = await quick(crew);
    const first = await value('outlook.swings', all);
    expect(first.swings).toHaveLength(9);
    expect([first.leftOut, first.histories, first.tourId]).toEqual([[], 20, 'demo-tour']);
    const walks = jobs.length;
    expect(await value('outlook.swings', { ...all, runId: 'again' })).toEqual(first);
    expect(jobs.slice(walks).every((count) => count === 0)).toBe(true);
    const { scores } = await value('comparison.run', {
      runId: 'comparison',
      tourId: 'demo-tour',
      scenarioIds: null,
    });
    expect([first.firstId, first.secondId]).toEqual(scores.slice(0, 2).map(({ id }) => id));
    expect(first.leadPoints).toBeCloseTo(100 * (scores[0]!.score - scores[1]!.score), 9);
  });

  it('walks the plan anew once a figure has changed', async () => {
    const { crew, jobs } = watchedCrew();
    const { value } = await quick(crew);
    const { leadPoints } = await value('outlook.swings', all);
    const [tour] = await value('tours.list', {});
    const { id, ...draft } = tour!;
    await value('tours.save', { id, tour: { ...draft, riderW: 160 } });
    const walks = jobs.length;
    expect((await value('outlook.swings', { ...all, runId: 'again' })).leadPoints).not.toBe(leadPoints);
    expect(jobs[walks]).toBe(3);
  });

  it('stops when it is told to, and keeps what it has walked for the next time', async () => {
    const watched = watchedCrew();
    const { call, value } = await quick(watched.crew);
    watched.onStart = () => {
      // The plan is walked by then.
      if (watched.jobs.length === 2) void call('runs.cancel', { runId: 'spec' });
    };
    expect(await call('outlook.swings', all)).toMatchObject({ ok: false, error: { code: 'cancelled' } });
    const before = watched.jobs.length;
    expect((await value('outlook.swings', { ...all, runId: 'again' })).swings).toHaveLength(9);
    expect(watched.jobs[before]).toBe(0);
  });
});
