import { describe, expect, it } from 'vitest';
import { clearSums, startTour, totalStoredWh } from '../../../../src-main/model/flow/step-state.ts';
import { bankOf, deviceOf, startHour } from '../../../support/flow-step.ts';

const kit = { devices: [deviceOf(), deviceOf({ key: 'other' })], banks: [bankOf()] };

describe('startTour()', () => {
  it('starts with every battery full and nothing flat, whatever was walked before', () => {
    const { network, course, state } = startHour(kit, [1, 2, 3], { mostUnreachableShare: 0.1 });
    Object.assign(state, { flatStep: 7, flatDevice: 1, warmth: 4 });
    state.order.set([1, 0]);
    startTour(network, course, state);
    expect([...state.storedWh]).toEqual([20, 20, 40]);
    expect([...state.order]).toEqual([0, 1]);
    expect([...state.mostUnreachableWh]).toEqual([2, 2, 4]);
    expect(state).toMatchObject({ flatStep: -1, flatDevice: -1, warmth: -1 });
  });
});

describe('totalStoredWh()', () => {
  it('adds up devices and banks', () => {
    expect(totalStoredWh(startHour(kit, [1, 2, 3]).state)).toBe(6);
  });
  it('is nothing for an empty kit', () => {
    expect(totalStoredWh(startHour({}, []).state)).toBe(0);
  });
});

describe('clearSums()', () => {
  it('clears what was counted and leaves what is stored', () => {
    const { state } = startHour(kit, [1, 2, 3]);
    const sums = [state.takenWh, state.servedWh, state.idleLossWh, state.pluggedWh, state.unservedWh];
    sums.forEach((each) => each.fill(5));
    clearSums(state);
    sums.forEach((each) => expect(each.every((wh) => wh === 0)).toBe(true));
    expect([...state.storedWh]).toEqual([1, 2, 3]);
  });
});
