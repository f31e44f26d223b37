import { describe, expect, it } from 'vitest';
import { lanesOf } from '../../../../../src-main/model/judge/stop-plan/lanes.ts';
import type { Hang } from '../../../../../src-main/model/judge/stop-plan/ways.ts';
import {
  evenGrid,
  stopBank,
  stopCharger,
  stopProblem,
  stopSituation,
  stopStore,
} from '../../../../support/stop-fixture.ts';

const chargers = [stopCharger([10, 10, 5])];
const grid = evenGrid(3, 10);
const problem = stopProblem(
  stopSituation({ minutes: 30, stores: [stopStore(), stopBank()], chargers }),
  grid,
);
const phone: Hang = { store: 0, portClass: 0, linkW: 10 };
const bank: Hang = { store: 1, portClass: 0, linkW: 10 };
const slow: Hang = { store: 1, portClass: 1, linkW: 5 };

describe('lanesOf', () => {
  it('joins slots in a row, and parts those with a break', () => {
    expect(lanesOf(problem, chargers, grid, [[phone], [phone], [phone]])[0]!.spans).toEqual([
      { store: 0, fromMinute: 0, toMinute: 30, startW: 10 },
    ]);
    const [lane] = lanesOf(problem, chargers, grid, [[phone], [], [phone]]);
    expect(lane!.spans.map(({ fromMinute, toMinute }) => [fromMinute, toMinute])).toEqual([
      [0, 10],
      [20, 30],
    ]);
  });

  it('gives equal ports one after the other, and leaves a plug in its port', () => {
    const lanes = lanesOf(problem, chargers, grid, [[phone], [phone, bank], [bank]]);
    expect(lanes.map(({ port, spans }) => [port, spans.map(({ store }) => store)])).toEqual([
      [0, [0]],
      [1, [1]],
    ]);
  });

  it('names the port as the charger has it, and what it gives at first', () => {
    const [lane] = lanesOf(problem, chargers, grid, [[slow], [slow], []]);
    expect(lane).toMatchObject({ charger: 0, port: 2, spans: [{ store: 1, fromMinute: 0, toMinute: 20 }] });
    expect(lane!.spans[0]!.startW).toBeCloseTo(5, 9);
  });
});
