import { describe, expect, it } from 'vitest';
import type { LegRide } from '../../../../../shared-types/leg-ride.ts';
import { dragMinADay, rideFinding } from '../../../../../src-renderer/views/tours/leg-ride/finding.ts';
import { legHub, legRide, pace } from '../../../support/fake-leg-ride.ts';

const finding = (change: Partial<LegRide> = {}): string =>
  rideFinding(legRide(change), 'en-GB').replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');
const withoutHub = { hub: null, off: null, on: null };

describe('dragMinADay()', () => {
  it('counts the drag apart from the grams', () => {
    expect(dragMinADay(legRide())).toBe(8);
  });

  it('takes the hub as it turns where it can not charge', () => {
    expect(dragMinADay(legRide({ on: null }))).toBe(2);
    expect(dragMinADay(legRide(withoutHub))).toBe(0);
  });
});

describe('rideFinding()', () => {
  it('says that nothing takes the power of a hub alone', () => {
    expect(finding({ hub: legHub({ converter: null, meanWhADay: 0 }), on: null })).toBe(
      'Nothing takes the hub’s power, and the hub’s drag costs 2 min a day; the grams of the kit cost 2 min more',
    );
  });

  it('claims no cost for a kit that weighs nothing', () => {
    expect(finding({ ...withoutHub, kitG: 0, loaded: pace(0) })).toBe(
      'The kit adds no grams and costs no time',
    );
  });

  it('gives no share where the devices need nothing', () => {
    expect(finding({ needWhADay: 0 })).toMatch(/^The hub gives 14 Wh on a mean day, and the hub’s drag/);
  });

  it('sets what the hub gives against what it costs', () => {
    expect(finding()).toBe(
      'The hub gives 14 Wh on a mean day, 55 % of what the devices need at its plug, and the hub’s drag costs 8 min a day; the grams of the kit cost 2 min more',
    );
  });

  it('says when the grams help on a leg that falls', () => {
    expect(finding({ loaded: pace(-0.5) })).toMatch(/the grams of the kit save 0.5 min$/);
  });

  it('gives grams and minutes without a hub', () => {
    expect(finding(withoutHub)).toBe('The kit’s 1,065 g cost 2 min a day');
  });
});
