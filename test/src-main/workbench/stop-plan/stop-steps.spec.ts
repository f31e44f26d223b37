import { describe, expect, it } from 'vitest';
import type { PluggedSpan, PortLane, StopStoreAnswer } from '../../../../shared-types/stop-plan.ts';
import { stopSteps } from '../../../../src-main/workbench/stop-plan/stop-steps.ts';

const stores = ['Phone', 'Bank', 'Camera'].map((label): StopStoreAnswer => ({
  itemId: label.toLowerCase(),
  copy: 0,
  label,
  role: 'must-have',
  capacityWh: 10,
  beforeWh: 1,
  afterWh: 2,
  needWh: 0,
  shortWh: 0,
}));

const span = (store: number, fromMinute: number, toMinute: number): PluggedSpan => ({
  store,
  fromMinute,
  toMinute,
  startW: 5,
});

const lane = (charger: string, port: number, ...spans: readonly PluggedSpan[]): PortLane => ({
  charger,
  port,
  portW: 15,
  spans,
});

const stepsOf = (...lanes: readonly PortLane[]) => stopSteps({ lanes, stores, minutes: 60 });

describe('the steps of a stop', () => {
  it('are none when nothing is plugged in', () => {
    expect(stepsOf()).toEqual([]);
  });

  it('swap what follows on a port, and say nothing of the end', () => {
    expect(stepsOf(lane('Cube', 1, span(0, 0, 35), span(1, 35, 60)))).toEqual([
      { minute: 0, text: 'Put ‘Cube’ into the wall; plug ‘Phone’ into port 1.' },
      { minute: 35, text: 'On port 1 swap ‘Phone’ for ‘Bank’.' },
    ]);
  });

  it('take off what nothing follows', () => {
    const steps = stepsOf(lane('Cube', 1, span(0, 0, 60)), lane('Cube', 2, span(2, 0, 20)));
    expect(steps[1]).toEqual({ minute: 20, text: 'Take ‘Camera’ off port 2.' });
  });

  it('name the charger where there are two, and give an outlet on', () => {
    const steps = stepsOf(lane('Cube', 1, span(0, 0, 20)), lane('Brick', 2, span(1, 20, 60)));
    expect(steps[1]).toEqual({
      minute: 20,
      text: 'Take ‘Cube’ and what hangs on it out; put ‘Brick’ into the wall; plug ‘Bank’ into port 2 of ‘Brick’.',
    });
  });

  it('take a charger that is done out, without a word more', () => {
    expect(stepsOf(lane('Cube', 1, span(0, 0, 20)))[1]).toEqual({
      minute: 20,
      text: 'Take ‘Cube’ and what hangs on it out.',
    });
  });
});
