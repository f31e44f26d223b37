import { describe, expect, it } from 'vitest';
import { hungriestLeg, useAtPlugWh } from '../../../../src-main/workbench/stop-rules/plug-use.ts';
import { deviceOf } from '../../../support/flow-step.ts';
import { expectNear } from '../../../support/near.ts';
import { groundOf } from './rules-ground.ts';

/** 1 W all day, of which a plug must give 1.25: it stores 0.8. */
const steady = deviceOf({ key: 'a-steady' });
/** 2 W while riding only, 6 h a day. */
const riding = deviceOf({ key: 'b-riding', useW: [0, 0, 2, 0], mustHave: false });

describe('useAtPlugWh()', () => {
  const { ready } = groundOf({ devices: [riding, steady] });

  it('is the use by the charging loss: 24 and 12 Wh a day are 30 and 15 Wh at the plug', () => {
    const [steadyWh, ridingWh] = useAtPlugWh(ready, { firstDay: 1, lastDay: 1 });
    expectNear(steadyWh!, 30, 1e-9, 'must-have, Wh at the plug');
    expectNear(ridingWh!, 15, 1e-9, 'nice-to-have, Wh at the plug');
  });

  it('leaves out steps that do not count, and is nothing of none', () => {
    const morning = (step: number): boolean => step % 24 < 12;
    const [steadyWh, ridingWh] = useAtPlugWh(ready, { firstDay: 0, lastDay: 1 }, morning);
    // Twelve hours of each of two days; four of them ridden: 24 / 0.8 and 16 / 0.8.
    expectNear(steadyWh!, 30, 1e-9, 'must-have, Wh at the plug');
    expectNear(ridingWh!, 20, 1e-9, 'nice-to-have, Wh at the plug');
    expect(useAtPlugWh(ready, { firstDay: 0, lastDay: 1 }, () => false)).toEqual([0, 0]);
  });
});

describe('hungriestLeg()', () => {
  it('asks for nothing without devices, on the first leg', () => {
    const ground = groundOf({ legs: [{ leg: 'Coast' }, { leg: 'Passes' }] });
    expect(hungriestLeg(ground)).toEqual({ leg: 'Coast', deviceWh: [], mustHaveWh: 0, sourcesWh: 0 });
  });

  it('counts must-haves only, and takes panel and hub of the same leg together', () => {
    const ground = groundOf({ devices: [steady, riding], legs: [{ panelWh: 9, hubWh: 4 }] });
    const { mustHaveWh, sourcesWh } = hungriestLeg(ground);
    expectNear(mustHaveWh, 30, 1e-9, 'must-haves, Wh a day at the plug');
    expect(sourcesWh).toBe(13);
  });

  it('is the leg on which a day asks for most, however few its days', () => {
    const onRide = { ...riding, mustHave: true };
    const rested = groundOf({
      devices: [onRide],
      legs: [
        { leg: 'Coast', days: 6 },
        { leg: 'Passes', days: 1 },
      ],
    });
    const { needWh, stepsPerDay } = rested.ready.course;
    // Twice as much on the last day.
    needWh.forEach((wh, step) => (needWh[step] = step >= 6 * stepsPerDay ? 2 * wh : wh));
    const { leg, mustHaveWh } = hungriestLeg(rested);
    expect(leg).toBe('Passes');
    expectNear(mustHaveWh, 30, 1e-9, 'must-haves, Wh a day at the plug');
  });
});
