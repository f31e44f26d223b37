import { describe, expect, it } from 'vitest';
import { fillBuffers } from '../../../../../src-main/model/flow/rules/fill-buffers.ts';
import { from } from '../../../../../src-main/model/flow/step-state.ts';
import type { BankModel } from '../../../../../src-main/model/storage/bank.ts';
import { bankOf, startHour, type HourAround } from '../../../../support/flow-step.ts';
import { expectNear } from '../../../../support/near.ts';

function fill(
  banks: readonly BankModel[],
  storedWh: readonly number[],
  offer: { readonly panelWh: number; readonly hubWh: number },
  around: Partial<HourAround> = {},
) {
  const { network, course, state } = startHour({ banks }, storedWh, around);
  state.offerWh[from.panel] = offer.panelWh;
  state.offerWh[from.hub] = offer.hubWh;
  fillBuffers(network, course, state);
  const taken = (source: number, bank: number): number => state.takenWh[source * banks.length + bank]!;
  return { state, taken };
}
const two = [bankOf({ key: 'a' }), bankOf({ key: 'b' })];

describe('fillBuffers()', () => {
  it('spills all of it without a bank', () => {
    const { state } = fill([], [], { panelWh: 5, hubWh: 3 });
    expect([state.offerWh[from.panel], state.offerWh[from.hub]]).toEqual([5, 3]);
  });

  it('spills what comes faster than the input', () => {
    const { state, taken } = fill([bankOf()], [0], { panelWh: 16, hubWh: 0 });
    expectNear(taken(from.panel, 0), 10, 1e-9, 'taken, Wh');
    expectNear(state.storedWh[0]!, 9, 1e-9, 'stored, Wh');
    expectNear(state.offerWh[from.panel]!, 6, 1e-9, 'spilled, Wh');
  });

  it('spills into full banks', () => {
    const { state } = fill([bankOf()], [40], { panelWh: 5, hubWh: 0 });
    expect([state.storedWh[0], state.offerWh[from.panel]]).toEqual([40, 5]);
  });

  it('spills rather than charge in the frost', () => {
    const { state } = fill([bankOf()], [10], { panelWh: 5, hubWh: 0 }, { charges: false });
    expect([state.storedWh[0], state.offerWh[from.panel]]).toEqual([10, 5]);
  });

  // A bank has one socket: while 8 W charge it the whole hour, 4 W find no room.
  it.each([
    { panelWh: 4, hubWh: 8, panelTaken: 0, hubTaken: 8 },
    { panelWh: 8, hubWh: 4, panelTaken: 8, hubTaken: 0 },
  ])('fills from the stronger of $panelWh and $hubWh W alone, for it has one socket', (each) => {
    const { state, taken } = fill([bankOf({ chargesWhileServing: true })], [0], each);
    expectNear(taken(from.panel, 0), each.panelTaken, 1e-9, 'panel, Wh');
    expectNear(taken(from.hub, 0), each.hubTaken, 1e-9, 'hub, Wh');
    expectNear(state.storedWh[0]!, 8 * 0.9, 1e-9, 'stored, Wh');
  });

  it('passes the rest on to the next bank', () => {
    const { state } = fill(two, [0, 0], { panelWh: 16, hubWh: 0 });
    expectNear(state.storedWh[0]!, 9, 1e-9, 'first, Wh');
    expectNear(state.storedWh[1]!, 5.4, 1e-9, 'second, Wh');
    expectNear(state.offerWh[from.panel]!, 0, 1e-9, 'spilled, Wh');
  });

  it('goes round a bank that serves all the time and can’t do both', () => {
    const { network, course, state } = startHour({ banks: two }, [20, 0]);
    state.turnHours[0] = 0;
    state.offerWh[from.panel] = 5;
    fillBuffers(network, course, state);
    expect(state.storedWh[0]).toBe(20);
    expectNear(state.storedWh[1]!, 4.5, 1e-9, 'second, Wh');
  });
});
