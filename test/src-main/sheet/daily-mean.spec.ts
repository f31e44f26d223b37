import { describe, expect, it } from 'vitest';
import type { Flow } from '../../../shared-types/flows.ts';
import { dailyMeanWh } from '../../../src-main/sheet/daily-mean.ts';
import { scenarioFixture } from '../../support/comparison-fixture.ts';
import { expectNear } from '../../support/near.ts';

const toleranceWh = 1e-9;

describe('dailyMeanWh', () => {
  it('is zero for a tour without days', () => {
    expect(dailyMeanWh([], 'wall')).toBe(0);
  });

  it('spreads a single wall night over all days', () => {
    const [day] = scenarioFixture('banks').days;
    const days = [0, 0, 0, 140].map((wall) => ({ ...day!, wall }));
    expect(dailyMeanWh(days, 'wall')).toBe(35);
  });

  it('keeps the balance of the ledger it averages', () => {
    const { days } = scenarioFixture('panel');
    const mean = (flow: Flow) => dailyMeanWh(days, flow);
    const storedWh = days.reduce((sum, day) => sum + day.stored, 0) / days.length;
    const usedWh = mean('demand') - mean('unserved');
    const income = mean('wall') + mean('panel') + mean('hub');
    expectNear(income, usedWh + mean('lost') + mean('spilled') + storedWh, toleranceWh, 'mean income, Wh');
  });
});
