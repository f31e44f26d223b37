import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { walkOn } from '../../../../src-main/model/field-log/walk-on.ts';
import { createState, type StepState } from '../../../../src-main/model/flow/step-state.ts';
import { walkTour } from '../../../../src-main/model/flow/walk-tour.ts';
import { deviceOf } from '../../../support/flow-step.ts';
import { anyRun, flowRun, type FlowRun } from '../../../support/random-flow.ts';

const nothingOff = -1;

function on(
  { network, course, draws }: FlowRun,
  storedWh: Float64Array,
  step = 0,
  off = nothingOff,
): { readonly walked: number; readonly state: StepState } {
  const state = createState(network, course.steps);
  return { walked: walkOn(network, course, draws, { step, storedWh }, off, state), state };
}

/** One watt, day and night. */
const lamp = deviceOf({ capacityWh: 24, useW: [1, 1, 1, 1] });
const wild = flowRun(
  { devices: [lamp] },
  [
    {
      ...{ days: 4, ridingHours: 6, stops: [] },
      nights: { by: 'pattern', kinds: ['none'], wallOutlets: 1, postOutlets: 1 },
    },
  ],
  60,
);

describe('walkOn()', () => {
  it('ends where a whole tour does when it begins at home with all full', () => {
    fc.assert(
      fc.property(anyRun, (run) => {
        const { network, course, draws } = run;
        const whole = createState(network, course.steps);
        walkTour(network, course, draws, 1, whole, null);
        const { walked, state } = on(run, network.capacityWh);
        expect([state.flatStep, state.flatDevice]).toEqual([whole.flatStep, whole.flatDevice]);
        expect(walked).toBe(whole.flatStep < 0 ? course.steps : whole.flatStep);
      }),
      { numRuns: 60 },
    );
  });

  it('lasts as many hours as there are watt-hours for one watt', () => {
    expect(on(wild, Float64Array.of(5), 30).walked).toBe(5);
    expect(on(wild, Float64Array.of(20), 30).walked).toBe(20);
  });

  it('is flat at once with nothing stored', () => {
    expect(on(wild, Float64Array.of(0), 30).walked).toBe(0);
  });

  it('walks to the end with a device that is switched off', () => {
    const { walked, state } = on(wild, Float64Array.of(0), 30, 0);
    expect([walked, state.flatStep]).toEqual([wild.course.steps - 30, -1]);
  });
});
