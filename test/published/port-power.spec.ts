import { describe, it } from 'vitest';
import type { PortStandard } from '../../shared-types/port.ts';
import { linkW } from '../../src-main/model/storage/port-power.ts';
import { expectNear } from '../support/near.ts';

/** Asks for more than any standard gives, through the best cable. */
const hungry = (standard: PortStandard) => ({ standard, powerW: 1000, cable: 'c-5a' }) as const;

describe('power of a port standard', () => {
  // Volts x amperes of each mode, exact: USB 2.0; USB 3.2; Battery Charging Specification 1.2; USB Type-C (IEC 62680-1-3).
  it.each([
    { standard: 'usb-2', volts: 5, amperes: 0.5 },
    { standard: 'usb-3', volts: 5, amperes: 0.9 },
    { standard: 'bc-1.2', volts: 5, amperes: 1.5 },
    { standard: 'type-c-1.5a', volts: 5, amperes: 1.5 },
    { standard: 'type-c-3a', volts: 5, amperes: 3 },
  ] as const)('$standard gives at most $volts V x $amperes A', ({ standard, volts, amperes }) =>
    expectNear(
      linkW({ standard, powerW: 1000 }, hungry(standard)),
      volts * amperes,
      1e-9,
      'power of the standard, W',
    ),
  );
});

describe('power of a Power Delivery level', () => {
  // IEC 62680-1-2 (Power Delivery 3.1), exact: fixed levels at 3 A, at 5 A with a cable marked for it, extended ones at 5 A.
  it.each([
    { volts: 5, amperes: 3, cable: 'c-3a' },
    { volts: 9, amperes: 3, cable: 'c-3a' },
    { volts: 15, amperes: 3, cable: 'c-3a' },
    { volts: 20, amperes: 3, cable: 'c-3a' },
    { volts: 20, amperes: 5, cable: 'c-5a' },
    { volts: 28, amperes: 5, cable: 'c-5a' },
    { volts: 36, amperes: 5, cable: 'c-5a' },
    { volts: 48, amperes: 5, cable: 'c-5a' },
  ] as const)('$volts V x $amperes A pass whole through a $cable cable', ({ volts, amperes, cable }) => {
    const level = { standard: 'pd', powerW: volts * amperes } as const;
    expectNear(linkW(level, { ...hungry('pd'), cable }), volts * amperes, 1e-9, 'power of the level, W');
  });

  it('ends at 240 W', () =>
    expectNear(linkW({ standard: 'pd', powerW: 1000 }, hungry('pd')), 48 * 5, 1e-9, 'power, W'));
});

describe('power of a cable', () => {
  // More than 3 A needs a marked cable (IEC 62680-1-3); other than 5 V needs Power Delivery, which an A plug has not (IEC 63002
  // cl. 4.5, IEC 62680-1-2). Exact.
  it.each([
    { cable: 'a-plug', volts: 5, amperes: 3 },
    { cable: 'c-3a', volts: 20, amperes: 3 },
    { cable: 'c-5a', volts: 48, amperes: 5 },
  ] as const)('$cable passes $volts V x $amperes A of the strongest source', ({ cable, volts, amperes }) =>
    expectNear(
      linkW({ standard: 'pd', powerW: 240 }, { ...hungry('pd'), cable }),
      volts * amperes,
      1e-9,
      'power of the cable, W',
    ),
  );

  it('a source of 50 W gives 2.5 A at 20 V', () =>
    // The example of the power rule in IEC 62680-1-2.
    expectNear(
      linkW({ standard: 'pd', powerW: 50 }, { ...hungry('pd'), cable: 'c-3a' }),
      2.5 * 20,
      1e-9,
      'link, W',
    ));
});
