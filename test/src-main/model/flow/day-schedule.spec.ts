import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { partAt, type StopPlan } from '../../../../src-main/model/flow/day-schedule.ts';
import { expectNear } from '../../../support/near.ts';

const lunch: StopPlan = { hours: 1, outlets: 1, chance: 0.5 };
const hoursOf = (ridingHours: number, stops: readonly StopPlan[], activity: string): number =>
  Array.from({ length: 24 * 60 }, (_, minute) => partAt((minute + 0.5) / 60, ridingHours, stops)).filter(
    (part) => part.activity === activity,
  ).length / 60;

describe('partAt()', () => {
  it.each([
    [3, 'night'],
    [7.5, 'stop'],
    [9, 'riding'],
    [11.5, 'stop'],
    [14, 'riding'],
    [16, 'stop'],
    [19, 'evening'],
    [23, 'night'],
  ])('at %d h of a day with six hours of riding and lunch it is %s', (hour, activity) => {
    expect(partAt(hour, 6, [lunch]).activity).toBe(activity);
  });

  it('tells a day stop from camp', () => {
    expect(partAt(11.5, 6, [lunch])).toMatchObject({ stop: 0, inCamp: false });
    expect(partAt(16, 6, [lunch])).toMatchObject({ stop: -1, inCamp: true });
  });

  it('rides exactly the hours asked for, whatever the stops', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 3 }), (quarters, count) => {
        const stops = Array.from({ length: count }, () => lunch);
        expectNear(hoursOf(quarters / 4, stops, 'riding'), quarters / 4, 0.05, 'riding, h');
      }),
    );
  });

  it('has no evening when the ride ends at bedtime', () => {
    expect(hoursOf(12, [lunch, lunch], 'evening')).toBe(0);
  });
});
