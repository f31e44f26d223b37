import { describe, expect, it } from 'vitest';
import { buildSupply } from '../../../../src-main/model/flow/supply.ts';
import { buildTimeline } from '../../../../src-main/model/flow/timeline.ts';
import { expectNear } from '../../../support/near.ts';

const timeline = buildTimeline(
  [
    {
      days: 1,
      ridingHours: 6,
      stops: [{ hours: 1, outlets: 1, chance: 0.4 }],
      nightPattern: ['none'],
      wallOutlets: 1,
      postOutlets: 1,
    },
  ],
  60,
);
const panelW = new Float64Array(timeline.steps).fill(2);

describe('buildSupply()', () => {
  const supply = buildSupply(timeline, panelW, [3], timeline.luckChance);

  it('gives hub power on the ride only', () => {
    expectNear(
      supply.hubW.reduce((sum, each) => sum + each, 0),
      18,
      1e-9,
      'hub, Wh',
    );
    expect(supply.hubW[3]).toBe(0);
  });

  it('takes a doubtful outlet for its share and a night’s wall for certain', () => {
    expect(supply.outletShare[11]).toBe(0.4);
    expect(supply.outletShare[5]).toBe(1);
  });

  it('takes the luck of a history where one is drawn', () => {
    expect(buildSupply(timeline, panelW, [3], Float64Array.of(1)).outletShare[11]).toBe(1);
    expect(buildSupply(timeline, panelW, [3], Float64Array.of(0)).outletShare[11]).toBe(0);
  });

  it('passes the power of the panels on', () => {
    expect(supply.panelW).toBe(panelW);
  });
});
