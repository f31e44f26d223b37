import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { Calls } from '../../../../src-renderer/state/calls.ts';
import { NoticesState } from '../../../../src-renderer/state/notices.svelte.ts';
import { StopPlannerState } from '../../../../src-renderer/state/stop-planner.svelte.ts';
import LanesFigure from '../../../../src-renderer/views/stop-planner/lanes-figure.svelte';
import StepList from '../../../../src-renderer/views/stop-planner/step-list.svelte';
import StopEmpty from '../../../../src-renderer/views/stop-planner/stop-empty.svelte';
import StoreTable from '../../../../src-renderer/views/stop-planner/store-table.svelte';
import { stopAnswer } from '../../support/fake-stops.ts';
import { FakeWorkbench } from '../../support/fake-workbench.ts';

function plannerOn({ catalogue, invoke }: FakeWorkbench): StopPlannerState {
  return new StopPlannerState(new Calls(invoke, new NoticesState()), {
    tours: () => catalogue.tours,
    tour: () => catalogue.tours[0] ?? null,
    scenarios: () => catalogue.scenarios,
    items: () => catalogue.items,
  });
}

const words = (body: string): string =>
  body
    .replaceAll(/<!--.*?-->|<[^>]+>/gu, ' ')
    .replaceAll(/[ \n\t]+/gu, ' ')
    .trim();

describe('the lanes of a stop', () => {
  it('lie along the minutes: 35 of 60 for the phone, the rest for the bank', () => {
    const { body } = render(LanesFigure, { props: { plan: stopAnswer() } });
    const spans = [...body.matchAll(/left: ?([\d.]+)%; ?width: ?([\d.]+)%/gu)].map(([, left, width]) => [
      Number(left),
      Number(width),
    ]);
    expect(spans).toEqual([
      [0, expect.closeTo((100 * 35) / 60, 9)],
      [expect.closeTo((100 * 35) / 60, 9), expect.closeTo((100 * 25) / 60, 9)],
    ]);
    expect(body).toContain('Phone, 0 to 35 min, 15\u00a0W');
  });

  it('are titled by what the stop comes to', () => {
    const { body } = render(LanesFigure, { props: { plan: stopAnswer() } });
    expect(words(body)).toMatch(/^Must-haves last until the next wall/);
  });
});

describe('the list of a stop', () => {
  it('names the minute of each step, and is left out where there is nothing to do', () => {
    expect(words(render(StepList, { props: { steps: stopAnswer().steps } }).body)).toContain(
      '35 min On port 1 swap ‘Phone’ for ‘Bank’.',
    );
    expect(words(render(StepList, { props: { steps: [] } }).body)).toBe('');
  });
});

describe('the table of devices and banks', () => {
  it('asks for a percentage, or lights where a bank has them, each field with a name', () => {
    const stop = plannerOn(new FakeWorkbench());
    const { body } = render(StoreTable, { props: { stop, plan: null } });
    expect(body).toContain('aria-label="Phone: full to, per cent"');
    expect(body).toMatch(/aria-label="[^"]*bank[^"]*: lights lit"/u);
    expect(words(body)).toContain('of 4 lit');
  });

  it('shows before, after and what stays short, and asks for use only of the rider’s own', () => {
    const stop = plannerOn(new FakeWorkbench());
    const shown = (): string => render(StoreTable, { props: { stop, plan: stopAnswer() } }).body;
    expect(words(shown())).toContain('80\u202f% 12.0 10.0 0.0');
    expect(shown()).not.toContain('Phone: use, Wh');
    stop.chooseUse('own');
    expect(shown()).toContain('Phone: use, Wh');
  });
});

describe('the stop planner with nothing to plan', () => {
  it.each([
    ['tours', (fake: FakeWorkbench) => fake.catalogue.tours.splice(0)],
    ['scenarios', (fake: FakeWorkbench) => fake.catalogue.scenarios.splice(0)],
  ])('leads to the %s', (screen, empty) => {
    const fake = new FakeWorkbench();
    empty(fake);
    expect(render(StopEmpty, { props: { stop: plannerOn(fake) } }).body).toContain(`href="#/${screen}"`);
  });
});
