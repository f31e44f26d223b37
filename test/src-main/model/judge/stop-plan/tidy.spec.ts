import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { search } from '../../../../../src-main/model/judge/stop-plan/search.ts';
import { followSlots, meritOf, tidied } from '../../../../../src-main/model/judge/stop-plan/tidy.ts';
import { worthOf } from '../../../../../src-main/model/judge/stop-plan/worth.ts';
import {
  anyStop,
  stopBank,
  stopProblem,
  stopSituation,
  stopStore,
} from '../../../../support/stop-fixture.ts';

const two = stopProblem(
  stopSituation({ minutes: 30, stores: [stopStore({ needWh: 2.5 }), stopBank({ efficiencyIn: 0.9 })] }),
);
const mode = (store: number) => two.plugs.modes.find(({ free }) => free[0]!.store === store)!;
const [phone, bank] = [mode(0), mode(1)];
const storesIn = (slots: ReturnType<typeof tidied>) => slots.map(([hang]) => hang?.store);

describe('tidied', () => {
  it('puts equal modes in a row, the must-have first', () => {
    const slots = tidied(two, [bank, phone, bank, phone, bank, phone]);
    expect(storesIn(slots)).toEqual([...storesIn(slots)].sort());
    expect(storesIn(slots)[0]).toBe(0);
  });

  it('gives up no need that is served for plugs that stay where they are', () => {
    const stop = [phone, phone, bank, bank, bank, phone];
    const end = followSlots(two, tidied(two, stop)).at(-1)!;
    expect(worthOf(two.stores, end).mustHaveWh).toBeCloseTo(2.5, 9);
  });

  it('plugs nothing in where nothing is', () => {
    expect(tidied(two, [])).toEqual([]);
  });

  it('never has less merit than the modes as they were found', () => {
    fc.assert(
      fc.property(anyStop(3, 2), (situation) => {
        const problem = stopProblem(situation);
        const { modes } = search(problem);
        const asFound = modes.map(({ ways }) => ways[0]!);
        expect(meritOf(problem, tidied(problem, modes))).toBeGreaterThanOrEqual(
          meritOf(problem, asFound) - 1e-9,
        );
      }),
      { seed: 4, numRuns: 25, endOnFailure: true },
    );
  });
});
