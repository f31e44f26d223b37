import { describe, expect, it } from 'vitest';
import { BankOrigins, originOf } from '../../../../../src-main/model/flow/record/bank-origins.ts';
import { clearSums, from } from '../../../../../src-main/model/flow/step-state.ts';
import { bankOf, startHour } from '../../../../support/flow-step.ts';
import { expectNear } from '../../../../support/near.ts';

/** A bank that stores nine tenths, and holds so much at the start of a tour. */
function startWith(storedWh: number) {
  const { network, state } = startHour({ banks: [bankOf()] }, [storedWh]);
  const origins = new BankOrigins(network);
  origins.reset(state);
  const expectShares = (expected: Partial<Record<keyof typeof originOf, number>>): void => {
    for (const name of ['start', 'wall', 'panel', 'hub'] as const)
      expectNear(origins.share(0, originOf[name]), expected[name] ?? 0, 1e-12, `share of ${name}`);
  };
  /** Keeps what is stored at the end of a day, then takes in what came on the next. */
  const nextDay = (
    storedAtEndWh: number,
    takenWh: { readonly [source in keyof typeof from]?: number },
  ): void => {
    state.storedWh[0] = storedAtEndWh;
    origins.keep(state);
    clearSums(state);
    for (const source of ['wall', 'panel', 'hub'] as const)
      state.takenWh[from[source]] = takenWh[source] ?? 0;
    origins.mix(state);
  };
  return { origins, state, expectShares, nextDay };
}

describe('BankOrigins', () => {
  it('has no share of an empty bank', () => {
    const { origins, state, expectShares } = startWith(0);
    origins.mix(state);
    expectShares({});
  });

  it('knows nothing but the start before anything came in', () => {
    const { origins, state, expectShares } = startWith(11);
    origins.mix(state);
    expectShares({ start: 1 });
  });

  it('mixes what comes in, less its loss, with what is there', () => {
    // 11 Wh from the start and 10 x 0.9 = 9 Wh from a wall.
    const { origins, state, expectShares } = startWith(11);
    state.takenWh[from.wall] = 10;
    origins.mix(state);
    expectShares({ start: 11 / 20, wall: 9 / 20 });
  });

  it('gives out of the mixture, day after day', () => {
    // Of 20 Wh half are left: 5.5 from the start, 4.5 from the wall; 9 Wh come from the panel.
    const { origins, state, expectShares, nextDay } = startWith(11);
    state.takenWh[from.wall] = 10;
    origins.mix(state);
    nextDay(10, { panel: 10 });
    expectShares({ start: 5.5 / 19, wall: 4.5 / 19, panel: 9 / 19 });
    nextDay(0, { hub: 3 });
    expectShares({ hub: 1 });
  });

  it('starts each tour anew', () => {
    const { origins, state, expectShares } = startWith(11);
    state.takenWh[from.panel] = 10;
    origins.mix(state);
    clearSums(state);
    origins.reset(state);
    origins.mix(state);
    expectShares({ start: 1 });
    expect(state.storedWh[0]).toBe(11);
  });
});
