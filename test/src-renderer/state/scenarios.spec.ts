import { beforeEach, describe, expect, it } from 'vitest';
import { mostScenariosCompared } from '../../../shared-types/scenario.ts';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { draftOf } from '../../../src-renderer/state/draft-of.ts';
import { EditHistory } from '../../../src-renderer/state/edit-history.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { ScenariosState } from '../../../src-renderer/state/scenarios.svelte.ts';
import { startingScenario } from '../../../src-renderer/views/scenarios/new-scenario.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe('ScenariosState', () => {
  let notices: NoticesState;
  let scenarios: ScenariosState;
  let changes: number;
  beforeEach(async () => {
    notices = new NoticesState();
    changes = 0;
    scenarios = new ScenariosState(
      new Calls(new FakeWorkbench().invoke, notices),
      () => changes++,
      new EditHistory(notices),
    );
    await scenarios.load();
  });

  const ids = (): string[] => scenarios.rows.all.map(({ id }) => id);

  it('keeps the stored scenario when an item stands in it twice', async () => {
    const before = scenarios.rows.find('demo-banks')!;
    const line = { itemId: 'demo-bank-20', quantity: 1 };
    const outcome = await scenarios.save('demo-banks', { ...draftOf(before), kit: [line, line] });
    expect(outcome.ok ? [] : outcome.error.fields).toMatchObject([{ path: 'scenario.kit' }]);
    expect([scenarios.rows.find('demo-banks'), changes]).toEqual([before, 0]);
  });

  it('compares no more scenarios than one comparison takes', async () => {
    for (let i = 0; i < mostScenariosCompared; i += 1) await scenarios.add(startingScenario());
    expect(scenarios.compared).toHaveLength(mostScenariosCompared);
    expect(scenarios.compared.map(({ id }) => id)).toEqual(ids().slice(0, mostScenariosCompared));
  });

  it('lets a later scenario in when an earlier one is left out', async () => {
    for (let i = 0; i < mostScenariosCompared; i += 1) await scenarios.add(startingScenario());
    const [first] = ids();
    scenarios.compare(first!, false);
    expect(scenarios.compared.map(({ id }) => id)).toEqual(ids().slice(1, mostScenariosCompared + 1));
    scenarios.compare(first!, true);
    expect(scenarios.compared[0]?.id).toBe(first);
  });

  it('removes with an undo that puts the scenario where it stood', async () => {
    const before = ids();
    await scenarios.remove(before[1]!);
    expect(ids()).toEqual([before[0], before[2]]);
    notices.undo(notices.shown.at(-1)!.id);
    await settle();
    expect(ids()).toEqual(before);
  });

  it('asks for a new comparison whenever the set changes', async () => {
    const added = await scenarios.add(startingScenario());
    scenarios.compare(added!.id, false);
    await scenarios.remove(added!.id);
    expect(changes).toBe(3);
  });
});
