import { describe, expect, it } from 'vitest';
import { fewHistories } from '../../../support/demo-ground.ts';
import { openedWorkbench } from '../../../support/open-workbench.ts';

const asked = { tourId: 'demo-tour', leg: 0, lying: { as: 'flat' }, by: 'day' } as const;

describe('tours.legSun', { timeout: 30_000 }, () => {
  it.each([
    { what: 'a leg before the first', input: { ...asked, leg: -1 }, path: 'leg' },
    { what: 'a part of a leg', input: { ...asked, leg: 0.5 }, path: 'leg' },
  ])('refuses $what', async ({ input, path }) => {
    const { call } = openedWorkbench();
    expect(await call('tours.legSun', input)).toMatchObject({
      ok: false,
      error: { code: 'bad-input', fields: [{ path, allowed: 'the number of a leg' }] },
    });
  });

  it.each([
    { what: 'tour', input: { ...asked, tourId: 'gone' } },
    { what: 'leg', input: { ...asked, leg: 59 } },
  ])('says so when the $what is not there', async ({ input }) => {
    const { call, faults } = openedWorkbench();
    expect(await call('tours.legSun', input)).toMatchObject({ ok: false, error: { code: 'not-found' } });
    expect(faults).toEqual([]);
  });

  it('follows what is stored: settings, items and the tour', async () => {
    const { value } = openedWorkbench();
    const before = await value('tours.legSun', asked);
    const settings = await value('settings.get', {});
    await value('settings.save', {
      settings: { ...settings, sky: { ...settings.sky, histories: 40, seed: 9 } },
    });
    const after = await value('tours.legSun', asked);
    expect([before.histories, after.histories]).toEqual([fewHistories, 40]);
    const [panel] = after.panels;
    await value('items.setState', { id: panel!.itemId, state: 'retired' });
    const without = await value('tours.legSun', asked);
    expect(without.panels.map(({ itemId }) => itemId)).not.toContain(panel!.itemId);
  });

  it('refuses own radiation that no sun sends, and stores none of it', async () => {
    const { call, value } = openedWorkbench();
    const [{ id, ...draft }] = (await value('tours.list', {})) as [
      Awaited<ReturnType<typeof value<'tours.list'>>>[number],
    ];
    const legs = draft.legs.map((leg) => ({
      ...leg,
      radiation: { as: 'own' as const, kWhM2ADay: new Array<number>(12).fill(13) },
    }));
    const refused = await call('tours.save', { id, tour: { ...draft, legs } });
    expect(refused).toMatchObject({ ok: false, error: { code: 'bad-input' } });
    expect((await value('tours.list', {}))[0]).toEqual({ id, ...draft });
  });

  it('moves the comparison with the rider’s own radiation', async () => {
    const { value } = openedWorkbench();
    const all = { runId: 'spec', tourId: 'demo-tour', scenarioIds: ['demo-panel'] };
    const [{ id, ...draft }] = (await value('tours.list', {})) as [
      Awaited<ReturnType<typeof value<'tours.list'>>>[number],
    ];
    const before = await value('comparison.run', all);
    const legs = draft.legs.map((leg) => ({
      ...leg,
      radiation: { as: 'own' as const, kWhM2ADay: new Array<number>(12).fill(1) },
    }));
    await value('tours.save', { id, tour: { ...draft, legs } });
    const after = await value('comparison.run', all);
    expect(after.scenarios[0]!.margin.value).toBeLessThan(before.scenarios[0]!.margin.value);
  });
});
