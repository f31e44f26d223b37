import { describe, expect, it } from 'vitest';
import { portStandard, usualCable } from '../../shared-types/port.ts';
import { cableLimitW, standardLimitW } from '../../src-main/model/storage/port-power.ts';

describe('usualCable()', () => {
  it.each(portStandard.options)('never holds back a sink of %s', (standard) => {
    for (const powerW of [0.1, 7.5, 15, 60, 60.5, 240]) {
      const passesW = cableLimitW[usualCable({ standard, powerW })];
      expect(passesW).toBeGreaterThanOrEqual(Math.min(powerW, standardLimitW[standard]));
    }
  });

  // IEC 62680-1-2: 20 V 3 A without a mark, 48 V 5 A with one.
  it('needs a mark for 5 A only above 60 W', () => {
    expect(usualCable({ standard: 'pd', powerW: 60 })).toBe('c-3a');
    expect(usualCable({ standard: 'pd', powerW: 60.5 })).toBe('c-5a');
  });

  it('has an A plug where the standard is older than Type-C', () => {
    const plugs = (['usb-2', 'usb-3', 'bc-1.2', 'type-c-1.5a'] as const).map((standard) =>
      usualCable({ standard, powerW: 100 }),
    );
    expect(plugs).toEqual(['a-plug', 'a-plug', 'a-plug', 'c-3a']);
  });
});
