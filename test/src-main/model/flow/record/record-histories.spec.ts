import { describe, expect, it } from 'vitest';
import { recordHistories } from '../../../../../src-main/model/flow/record/record-histories.ts';
import type { LegPlan } from '../../../../../src-main/model/flow/timeline.ts';
import { deviceOf } from '../../../../support/flow-step.ts';
import { flowRun } from '../../../../support/random-flow.ts';

const leg: LegPlan = {
  ...{ days: 1, ridingHours: 6, stops: [] },
  nights: { by: 'pattern', kinds: ['none'], wallOutlets: 1, postOutlets: 1 },
};

describe('recordHistories()', () => {
  const { network, course, draws } = flowRun({ devices: [deviceOf()] }, [leg], 60);

  it('tells of each history walked', () => {
    let walks = 0;
    const { histories } = recordHistories(network, course, [draws, draws, draws], 1, () => (walks += 1));
    expect([walks, histories]).toEqual([3, 3]);
  });

  it('walks each history alone: one leaves no trace in the next', () => {
    const hard = { ...draws, useScale: Float32Array.of(9) };
    const record = recordHistories(network, course, [hard, draws], 1, () => undefined);
    const alone = recordHistories(network, course, [draws], 1, () => undefined);
    expect([record.lowestWh[1], record.flatStep[1]]).toEqual([alone.lowestWh[0], alone.flatStep[0]]);
    expect(record.flatStep[0]).toBeGreaterThanOrEqual(0);
  });

  it('takes an empty kit', () => {
    const empty = flowRun({}, [leg], 60);
    const record = recordHistories(empty.network, empty.course, [empty.draws], 1, () => undefined);
    expect([...record.storedWh, ...record.lowestWh, ...record.flatStep]).toEqual([0, 0, -1]);
  });
});
