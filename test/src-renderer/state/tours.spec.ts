import { beforeEach, describe, expect, it } from 'vitest';
import { Calls } from '../../../src-renderer/state/calls.ts';
import { draftOf } from '../../../src-renderer/state/draft-of.ts';
import { EditHistory } from '../../../src-renderer/state/edit-history.svelte.ts';
import { NoticesState } from '../../../src-renderer/state/notices.svelte.ts';
import { ToursState } from '../../../src-renderer/state/tours.svelte.ts';
import { startingTour } from '../../../src-renderer/views/tours/new-tour.ts';
import { FakeWorkbench } from '../support/fake-workbench.ts';

const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe('ToursState', () => {
  let workbench: FakeWorkbench;
  let notices: NoticesState;
  let tours: ToursState;
  let changes: number;
  beforeEach(async () => {
    workbench = new FakeWorkbench();
    notices = new NoticesState();
    changes = 0;
    tours = new ToursState(new Calls(workbench.invoke, notices), () => changes++, new EditHistory(notices));
    await tours.load();
    await tours.add(startingTour('2027-06-01'));
    changes = 0;
  });

  const ids = (): string[] => tours.rows.all.map(({ id }) => id);

  it.each([
    ['no legs', { legs: [] }, 'tour.legs'],
    ['a date that does not exist', { startDate: '2027-02-30' }, 'tour.startDate'],
    ['an empty label', { label: '' }, 'tour.label'],
  ])('keeps the stored tour when it is given %s', async (_, change, path) => {
    const before = tours.rows.find('demo-tour')!;
    const outcome = await tours.save('demo-tour', { ...draftOf(before), ...change });
    expect(outcome.ok ? [] : outcome.error.fields).toMatchObject([{ path }]);
    expect([tours.rows.find('demo-tour'), changes]).toEqual([before, 0]);
  });

  it('keeps what was refused in the form of its tour', async () => {
    const [tour, other] = tours.rows.all;
    const form = tours.forms.of(tour!);
    form.set('label', '');
    expect(await form.settled()).toBe('refused');
    expect(tours.forms.of(tours.rows.find(tour!.id)!)).toBe(form);
    expect([form.at('label'), tours.forms.of(other!)].includes(form)).toBe(false);
    form.set('label', 'Along the gulf');
    expect(await form.settled()).toBe('stored');
    expect(tours.rows.find(tour!.id)?.label).toBe('Along the gulf');
  });

  it('keeps its list when a removal fails', async () => {
    await tours.remove('nothing');
    expect(ids()).toHaveLength(2);
  });

  it('removes with an undo that puts the tour where it stood', async () => {
    const before = ids();
    const [first] = tours.rows.all;
    await tours.remove(first!.id);
    expect(ids()).toEqual(before.slice(1));
    notices.undo(notices.shown.at(-1)!.id);
    await settle();
    expect(ids()).toEqual(before);
    expect(tours.rows.find(first!.id)).toEqual(first);
    expect(changes).toBe(2);
  });

  it('asks for a new comparison after a save', async () => {
    const tour = draftOf(tours.rows.find('demo-tour')!);
    await tours.save('demo-tour', { ...tour, riderW: 150 });
    expect([tours.rows.find('demo-tour')?.riderW, changes]).toEqual([150, 1]);
  });
});
