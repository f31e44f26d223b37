import { describe, expect, it } from 'vitest';
import type { Assumption } from '../../../../shared-types/comparison.ts';
import type { Swings } from '../../../../shared-types/swings.ts';
import { assumptionTable, swingTable } from '../../../../src-main/sheet/csv/grounds.ts';
import { scenarioFixture } from '../../../support/comparison-fixture.ts';
import { matterFixture, matterOf } from '../../../support/sheet-matter.ts';
import { swingFixture, swingsFixture } from '../../../support/swings-fixture.ts';
import { recordsOf } from './records.ts';

const rackFactor: Assumption = { name: 'Rack factor', value: '0.6', basis: 'rider', source: 'the scenario' };

describe('assumptionTable', () => {
  it('has a row for each figure, and names whose it is where not all rest on it', () => {
    const scenarios = [
      scenarioFixture('hub'),
      scenarioFixture('panel', { assumptions: [rackFactor] }),
      scenarioFixture('mix', { assumptions: [rackFactor] }),
    ];
    const common: Assumption = { name: 'Sunshine', value: '6.8 h', basis: 'default', source: 'a station' };
    expect(recordsOf(assumptionTable(matterOf({ scenarios, assumptions: [common] })))).toEqual([
      { assumption: 'Sunshine', value: '6.8 h', basis: 'default', source: 'a station', used_by: 'all' },
      {
        assumption: 'Rack factor',
        value: '0.6',
        basis: 'rider',
        source: 'the scenario',
        used_by: 'Panel and buffer bank; Hub with a panel',
      },
    ]);
  });
});

function swings(changes: Partial<Swings> = {}) {
  return recordsOf(swingTable(matterFixture({ swings: swingsFixture(changes) })));
}

describe('swingTable', () => {
  it('has no row where nothing could change', () => {
    expect(swingTable(matterFixture({ swings: { why: 'One scenario only.' } })).rows).toEqual([]);
  });

  it('leaves the first empty where limits leave out all', () => {
    const low = { value: 0.85, leadPoints: 0, leaderId: null };
    expect(swings({ swings: [swingFixture({ low })] })).toMatchObject([
      { first_at_low: null, first_at_high: 'Panel + buffer bank' },
    ]);
  });

  it('has a row for each assumption, with the value at which the first gives up its place', () => {
    expect(swings()[0]).toEqual({
      assumption: 'Days between walls',
      scale: 'days',
      low: 1,
      planned: null,
      high: 14,
      lead_of: 'Panel + buffer bank',
      lead_over: 'Generator hub',
      lead_points_planned: 30,
      lead_points_low: -9,
      lead_points_high: 70,
      first_at_low: 'Banks only',
      first_at_high: 'Panel + buffer bank',
      changes_sign: 'yes',
      flip_below: 2,
      flip_above: null,
      flips: 'at 2\u00a0days or fewer Banks only leads',
      source: 'common practice, no source',
    });
    expect(swings()[1]).toMatchObject({ planned: 1, changes_sign: 'no', flips: 'none in range' });
  });
});
