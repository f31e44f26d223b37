import { describe, expect, it } from 'vitest';
import { longestStretch, wallDays } from '../../../../src-main/workbench/stop-rules/stretch.ts';
import { deviceOf } from '../../../support/flow-step.ts';
import { expectNear } from '../../../support/near.ts';
import { bankLine, chargerLine, groundOf } from './rules-ground.ts';

const phone = deviceOf();
const daysOf = ({ firstDay, lastDay }: { readonly firstDay: number; readonly lastDay: number }) => [
  firstDay,
  lastDay,
];
const lunch = { label: 'Lunch', minutes: 60, outlets: 1, chance: 1 };

describe('wallDays()', () => {
  it('are none without a wall charger', () => {
    expect(wallDays(groundOf({ lines: [bankLine()] }))).toEqual([]);
  });

  it('are the nights with a wall, posts among them, and no day stop', () => {
    const legs = [{ days: 5, kinds: ['none', 'electric-post', 'wall'] as const, dayStops: [lunch] }];
    const kinds = ['none', 'electric-post', 'wall'] as const;
    expect(wallDays(groundOf({ legs: [{ ...legs[0], kinds: [...kinds] }] }))).toEqual([1, 2, 4]);
  });

  it('are no posts where only banks are plugged in and there is none', () => {
    const parts = {
      legs: [{ days: 2, kinds: ['electric-post' as const] }],
      rules: { atPost: 'banks-only' },
    } as const;
    const legs = [{ days: 2, kinds: ['electric-post' as const] }];
    expect(wallDays(groundOf({ ...parts, legs, lines: [chargerLine()] }))).toEqual([]);
    expect(wallDays(groundOf({ ...parts, legs }))).toEqual([0, 1]);
  });
});

describe('longestStretch()', () => {
  it('is the whole tour where no wall is expected, or none is of use', () => {
    const none = groundOf({ legs: [{ kinds: ['none'] }, { kinds: ['none'], days: 2 }] });
    expect(daysOf(longestStretch(none))).toEqual([0, 5]);
    expect(daysOf(longestStretch(groundOf({ lines: [bankLine()] })))).toEqual([0, 3]);
  });

  it('runs across legs, from the day after one wall to the day before whose night the next is', () => {
    const legs = [
      { days: 4, kinds: ['none', 'wall', 'none', 'none'] as const },
      { days: 3, kinds: ['none', 'wall', 'none'] as const },
    ].map((leg) => ({ ...leg, kinds: [...leg.kinds] }));
    expect(daysOf(longestStretch(groundOf({ legs })))).toEqual([2, 5]);
  });

  it('is a day where there is a wall every night, and the first of equals', () => {
    expect(daysOf(longestStretch(groundOf({ legs: [{ kinds: ['wall'] }] })))).toEqual([0, 0]);
  });

  it('is, of equally long ones, that on which the must-haves use more', () => {
    // From the wall at home to the wall of night 2 are 30 h; from then to the end of the tour 38 h: it ends with no wall.
    const ground = groundOf({
      devices: [phone],
      legs: [{ days: 4, kinds: ['none', 'wall', 'none', 'none'] }],
    });
    expect(daysOf(longestStretch(ground))).toEqual([2, 3]);
  });

  it('counts what is used away from walls only', () => {
    // 1 W from 8 h of the first day to 14 h of the fourth: 78 Wh, and 97.5 at the plug.
    const { deviceWh } = longestStretch(groundOf({ devices: [phone] }));
    expectNear(deviceWh[0]!, 97.5, 1e-9, 'use, Wh at the plug');
  });

  it('counts all that is used where no wall is of use', () => {
    const { deviceWh } = longestStretch(groundOf({ devices: [phone], lines: [bankLine()] }));
    expectNear(deviceWh[0]!, 120, 1e-9, 'use, Wh at the plug');
  });

  it('adds what panel and hub give on its days and on no others', () => {
    const legs = [
      { days: 2, kinds: ['none' as const, 'wall' as const], panelWh: 100 },
      { days: 3, kinds: ['none' as const], panelWh: 10, hubWh: 4 },
    ];
    expect(longestStretch(groundOf({ legs })).sourcesWh).toBe(42);
  });
});
