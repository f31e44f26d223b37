import { describe, expect, it } from 'vitest';
import { weighed, worthOf } from '../../../../../src-main/model/judge/stop-plan/worth.ts';
import { stopBank, stopStore } from '../../../../support/stop-fixture.ts';

const must = stopStore({ needWh: 6 });
const nice = stopStore({ key: 'camera', rank: 'nice-to-have', needWh: 4 });
const stores = [must, nice, stopBank()];

describe('worthOf', () => {
  it('counts no more of a battery than its device needs', () => {
    expect(worthOf([must], [9])).toEqual({ mustHaveWh: 6, niceToHaveWh: 0, usableWh: 9 });
  });

  it('lets banks serve must-haves first, through their losses', () => {
    // 5 Wh in the bank are 3.5 Wh at a device: the phone lacks 3, the camera gets the other half Wh.
    const worth = worthOf(stores, [3, 1, 5]);
    expect(worth.mustHaveWh).toBeCloseTo(6, 12);
    expect(worth.niceToHaveWh).toBeCloseTo(1.5, 12);
    expect(worth.usableWh).toBeCloseTo(7.5, 12);
  });

  it('lets no device serve another', () => {
    expect(worthOf([must, nice], [0, 10])).toMatchObject({ mustHaveWh: 0, niceToHaveWh: 4 });
  });
});

describe('weighed', () => {
  it('puts must-haves above nice-to-haves, and those above what is merely stored', () => {
    const none = { mustHaveWh: 0, niceToHaveWh: 0, usableWh: 0 };
    expect(weighed({ ...none, mustHaveWh: 1 })).toBeGreaterThan(weighed({ ...none, niceToHaveWh: 50 }));
    expect(weighed({ ...none, niceToHaveWh: 1 })).toBeGreaterThan(weighed({ ...none, usableWh: 50 }));
  });
});
