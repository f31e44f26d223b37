import { describe, expect, it } from 'vitest';
import type { LegRide } from '../../../../../shared-types/leg-ride.ts';
import { rideFacts } from '../../../../../src-renderer/views/tours/leg-ride/facts.ts';
import { legHub, legRide } from '../../../support/fake-leg-ride.ts';

const facts = (change: Partial<LegRide> = {}): Record<string, string> => {
  const plain = (text: string): string => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');
  const all = rideFacts(legRide(change), 'en-GB');
  return Object.fromEntries(all.map(({ name, value }) => [plain(name), plain(value)]));
};

const need = {
  'Where your power goes': '100 W: air 52, rolling 30, slopes 6, bearings and chain 5, hub 4, brakes 3',
  'What the devices need, at the hub’s plug': '25.5 Wh a day',
};
const braking = 'Riding time at the fastest downhill, braking';

describe('rideFacts()', () => {
  it.each([
    ['no hub', null],
    ['a hub that nothing takes from', legHub({ converter: null })],
  ])('says nothing of power with %s', (_, hub) => {
    expect(facts({ hub, brakingShare: 0 })).toEqual(need);
  });

  it('puts what takes most first and leaves out what takes next to nothing', () => {
    const power = { ...legRide().power, hubW: 0.2, brakesW: 0, slopeW: 70 };
    expect(facts({ power })['Where your power goes']).toBe(
      '100 W: slopes 70, air 52, rolling 30, bearings and chain 5',
    );
  });

  it('leaves out pushing and braking that never happen', () => {
    expect(Object.keys(facts({ pushingShare: 0, brakingShare: 0.0001 }))).not.toContain(braking);
  });

  it('gives how much of the time is pushed and braked', () => {
    expect(facts({ hub: null, pushingShare: 0.034, brakingShare: 0.02 })).toEqual({
      ...need,
      'Riding time spent pushing': '3.4 %',
      [braking]: '2 %',
    });
  });

  it('leaves out the kinds of day where all days are alike', () => {
    const names = Object.keys(facts({ hub: legHub({ daysWh: null }) }));
    expect(names).not.toContain('A slow day, a usual day, a good day');
  });

  it('gives one figure where the kinds of day come to the same', () => {
    const given = facts({ hub: legHub({ daysWh: { p10: 13.8, p50: 14, p90: 14.3 } }) });
    expect(given['A slow, a usual and a good day alike']).toBe('14 Wh');
    expect(Object.keys(given)).not.toContain('A slow day, a usual day, a good day');
  });

  it('gives no start speed where the converter has none', () => {
    const given = facts({ hub: legHub({ startSpeedKmh: null }) });
    expect(given['Riding time above the converter’s start']).toBe('85 %');
  });

  it('gives what the hub does over its days', () => {
    expect(facts({ brakingShare: 0 })).toEqual({
      ...need,
      'At the plug while riding': '2.3 W',
      'Riding time above the converter’s start, 10 km/h': '85 %',
      'A slow day, a usual day, a good day': '11 Wh, 14 Wh, 17 Wh',
      'Days the hub alone falls short': '1 of 3',
    });
  });
});
