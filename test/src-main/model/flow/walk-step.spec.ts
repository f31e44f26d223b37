import { describe, expect, it } from 'vitest';
import { from, type StepState } from '../../../../src-main/model/flow/step-state.ts';
import { walkStep } from '../../../../src-main/model/flow/walk-step.ts';
import type { Draws } from '../../../../src-main/model/flow/histories/draws.ts';
import type { KitModel, Network } from '../../../../src-main/model/flow/network.ts';
import { bankOf, chargerOf, deviceOf, startHour, type HourAround } from '../../../support/flow-step.ts';
import { expectNear } from '../../../support/near.ts';

/** So much sun, and use as planned. */
const drawsOf = ({ deviceCount }: Network, panelW: number): Draws => ({
  panelW: Float32Array.of(panelW),
  outletIsFree: new Uint8Array(0),
  useScale: new Float32Array(deviceCount).fill(1),
});

/** Walks one hour with so much sun; a wall is there for all of it where there is an outlet. */
function walkHour(
  kit: Partial<KitModel>,
  storedWh: readonly number[],
  { panelW = 0, ...around }: { readonly panelW?: number } & Partial<HourAround> = {},
): StepState {
  const { network, course, state } = startHour(kit, storedWh, around);
  walkStep(network, course, drawsOf(network, panelW), state, 0);
  return state;
}

function expectAll(got: readonly number[], expected: readonly number[], what: string): void {
  expect(got).toHaveLength(expected.length);
  got.forEach((value, at) => expectNear(value, expected[at]!, 1e-9, what));
}

const must = deviceOf();
const nice = deviceOf({ key: 'nice', mustHave: false });
const onePort = [chargerOf([10])];
const taken = (state: StepState, source: number, sink: number): number =>
  state.takenWh[source * state.storedWh.length + sink]!;

describe('walkStep() away from any source', () => {
  it('takes an empty kit', () => {
    expect(walkHour({}, [], { panelW: 5, outlets: 1 })).toMatchObject({ flatStep: -1, flatDevice: -1 });
  });

  it('names the must-have that runs flat and books what it lacked', () => {
    const state = walkHour({ devices: [nice, must] }, [0.5, 20], { needWh: [2, 2] });
    expect([state.flatStep, state.flatDevice]).toEqual([0, 0]);
    expectNear(state.unservedWh[0]!, 1.5, 1e-12, 'unserved, Wh');
    expect([state.deficitWh[0], state.storedWh[1]]).toEqual([0, 18]);
  });

  it('calls no tour short for a flat nice-to-have', () => {
    const state = walkHour({ devices: [nice] }, [0], { needWh: [2] });
    expect([state.flatStep, state.unservedWh[0]]).toEqual([-1, 2]);
  });

  it('keeps the first flat must-have', () => {
    const { network, course, state } = startHour({ devices: [must] }, [0], { needWh: [2] });
    Object.assign(state, { flatStep: 5, flatDevice: 3 });
    walkStep(network, course, drawsOf(network, 0), state, 0);
    expect([state.flatStep, state.flatDevice]).toEqual([5, 3]);
  });

  it('finds a full battery flat in deep cold', () => {
    const state = walkHour({ devices: [must] }, [20], { needWh: [1], unreachableShare: 1, charges: false });
    expect([state.flatStep, state.storedWh[0]]).toEqual([0, 20]);
  });
});

describe('walkStep() with a bank', () => {
  const kit = { devices: [must], banks: [bankOf()] };

  it('fills low devices in camp', () => {
    expectNear(walkHour(kit, [5, 40]).storedWh[0]!, 13, 1e-9, 'device, Wh');
  });

  it('plugs in on the ride only what would run flat', () => {
    const low = walkHour(kit, [5, 40], { riding: true, needWh: [1] });
    expect([low.storedWh[0], low.storedWh[1]]).toEqual([4, 40]);
    const short = walkHour(kit, [0.2, 40], { riding: true, needWh: [1] });
    expectNear(short.storedWh[1]!, 40 - 0.8 / 0.8 / 0.5, 1e-9, 'bank, Wh');
    expect([short.storedWh[0], short.flatStep]).toEqual([0, -1]);
  });

  it('draws standby only in hours in which it serves', () => {
    const thirsty = { devices: [must], banks: [bankOf({ standbyW: 0.5 })] };
    expect(walkHour(thirsty, [20, 40]).storedWh[1]).toBe(40);
    expectNear(walkHour(thirsty, [0, 40]).storedWh[1]!, 40 - 20 - 0.5, 1e-9, 'bank, Wh');
  });
});

describe('walkStep() at a wall with one port', () => {
  const kit = { devices: [must], banks: [bankOf()], chargers: onePort };
  const wallTo = (state: StepState): number[] =>
    [...state.storedWh].map((_, sink) => taken(state, from.wall, sink));

  it('charges devices first, then banks', () => {
    expectAll(wallTo(walkHour(kit, [0, 0], { outlets: 1 })), [10, 0], 'from the wall, Wh');
    expectAll(wallTo(walkHour(kit, [20, 0], { outlets: 1 })), [0, 10], 'from the wall, Wh');
  });

  it('charges banks first, if the rider says so', () => {
    const rules = { atWall: 'banks-first' } as const;
    expectAll(wallTo(walkHour(kit, [0, 0], { outlets: 1, rules })), [0, 10], 'from the wall, Wh');
  });

  it('lets no device run flat beside it, even with banks first', () => {
    // 1.6 Wh are short, 2 Wh at the plug.
    const rules = { atWall: 'banks-first' } as const;
    const state = walkHour(kit, [0, 0], { outlets: 1, rules, needWh: [1.6] });
    expectNear(taken(state, from.wall, 0), 2, 1e-9, 'device, Wh');
    expectNear(taken(state, from.wall, 1), 8, 1e-9, 'bank, Wh');
    expect(state.flatStep).toBe(-1);
  });

  it.each([
    { whenShort: 'nice-to-haves-wait', reserveWh: 100, charged: [0, 0, 10] },
    { whenShort: 'nice-to-haves-wait', reserveWh: 10, charged: [0, 10, 0] },
    { whenShort: 'serve-all', reserveWh: 100, charged: [0, 10, 0] },
  ] as const)(
    'makes nice-to-haves wait for the banks while the must-haves are short: $whenShort, $reserveWh Wh',
    ({ whenShort, reserveWh, charged }) => {
      const all = { ...kit, devices: [must, nice] };
      const state = walkHour(all, [20, 5, 0], { outlets: 1, reserveWh, rules: { whenShort } });
      expectAll(wallTo(state), charged, 'from the wall, Wh');
    },
  );

  it('gives nice-to-haves that waited what the banks leave', () => {
    // The bank takes 5 W of the port's 10.
    const banks = [bankOf({ input: { standard: 'pd', powerW: 5, cable: 'c-3a' } })];
    const all = { devices: [must, nice], banks, chargers: [chargerOf([10, 10])] };
    const state = walkHour(all, [20, 5, 0], { outlets: 1, reserveWh: 100 });
    expectAll(wallTo(state), [0, 10, 5], 'from the wall, Wh');
  });
});

describe('walkStep() at a campsite post with banks only', () => {
  const rules = { atPost: 'banks-only' } as const;
  const banks = [bankOf({ key: 'a' }), bankOf({ key: 'b' })];
  const kit = { devices: [must], banks, chargers: [chargerOf([10, 10])] };

  it('fills one bank while the other serves the tent', () => {
    const state = walkHour(kit, [0, 20, 20], { outlets: 1, atPost: true, rules });
    expect(taken(state, from.wall, 0)).toBe(0);
    expectNear(taken(state, from.wall, 1), 10, 1e-9, 'the one that fills, Wh');
    expect([...state.servedWh]).toEqual([0, 10]);
    expect(taken(state, from.wall, 2)).toBe(0);
    expectNear(state.storedWh[0]!, 8, 1e-9, 'device, Wh');
  });

  it('plugs devices in at any other wall', () => {
    const state = walkHour(kit, [0, 20, 20], { outlets: 1, rules });
    expectNear(taken(state, from.wall, 0), 10, 1e-9, 'device, Wh');
  });
});

describe('walkStep() with sun and hub', () => {
  const kit = { devices: [must], banks: [bankOf({ chargesWhileServing: true })] };
  const riding = { riding: true, panelW: 4 } as const;

  it('puts them into the bank by default', () => {
    const state = walkHour(kit, [5, 0], riding);
    expectAll([state.storedWh[0]!, taken(state, from.panel, 1)], [5, 4], 'device stores, bank takes, Wh');
  });

  it('puts them into devices first, if the rider says so', () => {
    const state = walkHour(kit, [5, 0], { ...riding, rules: { unsteadySource: 'device-too' } });
    expectAll([taken(state, from.panel, 0), taken(state, from.panel, 1)], [4, 0], 'taken, Wh');
  });

  it('makes nice-to-haves wait for the banks, then feeds them what is left', () => {
    const rules = { unsteadySource: 'device-too' } as const;
    const waiting = { devices: [must, nice], banks: kit.banks };
    const around = { panelW: 16, rules, reserveWh: 100 };
    const state = walkHour(waiting, [20, 0, 0], around);
    expectAll(
      [1, 2].map((sink) => taken(state, from.panel, sink)),
      [6, 10],
      'taken, Wh',
    );
  });

  it('serves from a bank before it fills it, if it can’t do both', () => {
    // The device takes 10 W for the whole hour, so the bank has no time to be charged.
    const state = walkHour({ devices: [must], banks: [bankOf()] }, [0, 40], { panelW: 4 });
    expectAll([state.servedWh[0]!, taken(state, from.panel, 1)], [10, 0], 'served and taken, Wh');
    const both = walkHour(kit, [0, 30], { panelW: 4 });
    expectAll([both.servedWh[0]!, taken(both, from.panel, 1)], [10, 4], 'served and taken, Wh');
  });
});

describe('energy straight and through a bank', () => {
  const kit = { devices: [must], banks: [bankOf()], chargers: onePort };
  const sunny = { panelW: 10, outlets: 0 } as const;

  /** Wh drawn from a source for each Wh in a device, when a bank is filled in one hour and serves in the next. */
  function throughBank(source: number, around: { readonly panelW?: number } & Partial<HourAround>): number {
    const { takenWh, storedWh } = walkHour({ ...kit, devices: [] }, [0], around);
    const later = walkHour(kit, [0, storedWh[0]!]);
    expectNear(later.storedWh[1]!, 0, 1e-12, 'left in the bank, Wh');
    return takenWh[source]! / later.storedWh[0]!;
  }

  // Closed form: 1 / 0.8 straight; 1 / (0.9 x 0.5 x 0.8) through the bank.
  it('costs the device’s own loss straight from a wall or a panel', () => {
    const wall = walkHour(kit, [0, 40], { outlets: 1, rules: { unsteadySource: 'device-too' } });
    expectNear(taken(wall, from.wall, 0) / wall.storedWh[0]!, 1 / 0.8, 1e-9, 'drawn per Wh, wall');
    const sun = walkHour({ devices: [must] }, [0], { ...sunny, rules: { unsteadySource: 'device-too' } });
    expectNear(taken(sun, from.panel, 0) / sun.storedWh[0]!, 1 / 0.8, 1e-9, 'drawn per Wh, panel');
  });
  it('costs the bank’s loss in and out as well through a bank', () => {
    expectNear(throughBank(from.wall, { outlets: 1 }), 1 / (0.9 * 0.5 * 0.8), 1e-9, 'drawn per Wh, wall');
    expectNear(throughBank(from.panel, sunny), 1 / (0.9 * 0.5 * 0.8), 1e-9, 'drawn per Wh, panel');
  });
});
