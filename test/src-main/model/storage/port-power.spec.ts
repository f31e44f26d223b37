import { describe, expect, it } from 'vitest';
import { linkW } from '../../../../src-main/model/storage/port-power.ts';

describe('linkW()', () => {
  it('is the least of source, sink and both standards', () => {
    expect(linkW({ standard: 'pd', powerW: 30 }, { standard: 'pd', powerW: 18 })).toBe(18);
    expect(linkW({ standard: 'pd', powerW: 12 }, { standard: 'pd', powerW: 18 })).toBe(12);
    expect(linkW({ standard: 'usb-2', powerW: 30 }, { standard: 'pd', powerW: 18 })).toBe(2.5);
    expect(linkW({ standard: 'pd', powerW: 30 }, { standard: 'usb-3', powerW: 18 })).toBe(4.5);
  });
});
