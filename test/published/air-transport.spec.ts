import { describe, expect, it } from 'vitest';
import type { AirKind } from '../../shared-types/air-check.ts';
import { labelWh } from '../../shared-types/item.ts';
import { airCheck } from '../../src-main/model/judge/air-transport.ts';

const check = (kind: AirKind, wh: number, count = 1) =>
  airCheck([{ label: 'Battery', kind, count, labelWh: wh }]);
const bankOf = (mAh: number) => check('power-bank', labelWh({ as: 'mah', mAh, cellV: 3.7 }));

describe('watt-hours of one battery by air', () => {
  // Up to 100 Wh no approval: TSA, "Lithium batteries with 100 watt hours or less in a device"; guide to the passenger provisions
  // of IATA and ICAO, lithium.batteriestransport.org, 2024. Over 100 and up to 160 Wh with the airline's approval: FAA PackSafe,
  // "Lithium batteries". Over 160 Wh not carried: an airline's notice; the wording of ICAO Doc 9284 is from memory.
  it.each([
    // 99.9, 100.27 and 160.21 Wh at 3.7 V, a phone cell's nominal voltage (common practice, no source).
    { mAh: 27_000, airClass: 'within' },
    { mAh: 27_100, airClass: 'approval' },
    { mAh: 43_300, airClass: 'stays-home' },
  ])('$mAh mAh at 3.7 V: $airClass', ({ mAh, airClass }) => expect(bankOf(mAh).verdict.class).toBe(airClass));

  it.each([
    { wh: 100, airClass: 'within' },
    { wh: 160, airClass: 'approval' },
  ])('just $wh Wh: $airClass', ({ wh, airClass }) => {
    // "A rating of 100 watt hours" is the limit itself (TSA, as above); "up to 160 Wh" (FAA PackSafe).
    for (const kind of ['power-bank', 'spare-battery', 'in-device'] as const)
      expect(check(kind, wh).verdict.class).toBe(airClass);
  });
});

describe('how many one person carries by air', () => {
  it('three power banks of 37 Wh are one too many since 27 March 2026', () => {
    // ICAO Doc 9284 (2025-2026), Addendum 1: UK Civil Aviation Authority, "Changes to rules on the carriage of lithium
    // cells/batteries and power banks".
    const { verdict, rules } = check('power-bank', 37, 3);
    expect(check('power-bank', 37, 2).verdict.class).toBe('within');
    expect(verdict).toEqual({
      class: 'stays-home',
      text: 'Does not fly as packed: 3 power banks, at most 2 a person.',
    });
    expect(rules.filter(({ since }) => since === '2026-03-27')).toHaveLength(2);
  });

  it('two spares of 101 to 160 Wh with approval, no third', () => {
    // FAA PackSafe, "Lithium batteries": up to 160 Wh with the airline's approval, at most two.
    expect(check('spare-battery', 101, 2).verdict.class).toBe('approval');
    expect(check('spare-battery', 101, 3).verdict.class).toBe('stays-home');
    expect(check('spare-battery', 100, 3).verdict.class).toBe('within');
  });

  it('fifteen devices; the airline may allow more', () => {
    // Guide to the passenger provisions of IATA and ICAO, lithium.batteriestransport.org, 2024.
    expect(check('in-device', 20, 15).verdict.class).toBe('within');
    expect(check('in-device', 20, 16).verdict.class).toBe('approval');
  });
});
