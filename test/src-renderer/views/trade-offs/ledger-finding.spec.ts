import { describe, expect, it } from 'vitest';
import type { DayLedger, DeviceDay } from '../../../../shared-types/comparison.ts';
import { energyOfAll, energyOfOne } from '../../../../src-renderer/views/trade-offs/daily-energy.ts';
import { ledgerFinding } from '../../../../src-renderer/views/trade-offs/ledger-finding.ts';
import { demoResult } from '../../support/demo-comparison.ts';

const hard = '\u00a0';
const narrow = '\u202f';

const empty: DayLedger = {
  day: 1,
  date: '2027-05-03',
  demand: 20,
  used: 20,
  unserved: 0,
  wall: 0,
  wallToBanks: 0,
  panel: 0,
  hub: 0,
  lost: 0,
  spilled: 0,
  stored: -20,
};
const emptyDevice: DeviceDay = {
  demand: 8,
  unserved: 0,
  wallDirect: 0,
  wallThroughBank: 0,
  panel: 0,
  hub: 0,
  start: 0,
};

function ledger(...days: Partial<DayLedger>[]): string {
  const filled = days.map((day, i) => ({ ...empty, day: i + 1, ...day }));
  return ledgerFinding(energyOfAll(demoResult('demo-panel', { days: filled })), 'en-GB');
}

function deviceLedger(...days: Partial<DeviceDay>[]): string {
  const ledger = { device: 'Phone', mustHave: true, days: days.map((day) => ({ ...emptyDevice, ...day })) };
  const result = demoResult('demo-panel', { days: days.map((_, i) => ({ ...empty, day: i + 1 })) });
  return ledgerFinding(energyOfOne(result, { name: 'Phone', ledger }), 'en-GB');
}

describe('ledgerFinding() of all devices', () => {
  it('puts missing energy before anything else', () => {
    expect(ledger({ panel: 30 }, { unserved: 4.2 }, { unserved: 1 })).toBe(
      `On average 5.2${hard}Wh of what the devices ask for is not served, on 2 of 3 days`,
    );
  });

  it('does not report rounding as missing energy', () => {
    const days = Array.from({ length: 60 }, () => ({ panel: 30, unserved: 0.001 }));
    expect(ledger(...days)).not.toContain('not served');
  });

  it('says when nothing comes in at all', () => {
    expect(ledger({}, {})).toBe('Nothing comes in: the tour lives on what was stored');
  });

  it.each([
    [{ wall: 60, wallToBanks: 35, panel: 40 }, `Walls give 60${narrow}% of what comes in`],
    [{ wall: 25, panel: 75 }, `The panel gives 75${narrow}% of what comes in`],
    [{ wall: 10, hub: 90 }, `The hub gives 90${narrow}% of what comes in`],
  ])('names the main source of %o', (day, text) => {
    expect(ledger(day)).toBe(text);
  });

  it.each([
    [{ panel: 80, spilled: 40 }, `; 50${narrow}% of what the panel gives is spilled`],
    [{ hub: 40, spilled: 4 }, `; 10${narrow}% of what the hub gives is spilled`],
    [{ panel: 60, hub: 40, spilled: 20 }, `; 20${narrow}% of what panel and hub give is spilled`],
  ])('says that much is spilled of %o', (day, text) => {
    expect(ledger(day)).toContain(text);
  });

  it('leaves unsaid what is hardly spilled', () => {
    expect(ledger({ panel: 100, spilled: 9 })).not.toContain('spilled');
  });
});

describe('ledgerFinding() of one device', () => {
  it('names the device that misses something', () => {
    expect(deviceLedger({ unserved: 2 }, {})).toBe(
      `On average 2${hard}Wh of what the phone asks for is not served, on 1 of 2 days`,
    );
  });

  it('says when it lives on its own battery', () => {
    expect(deviceLedger({}, {})).toBe('Nothing reaches the phone: it lives on its own battery');
  });

  it.each([
    [{ wallDirect: 3, wallThroughBank: 3, hub: 4 }, `Walls give 60${narrow}% of what reaches the phone`],
    [
      { wallDirect: 1, start: 3 },
      `Banks as filled before the tour give 75${narrow}% of what reaches the phone`,
    ],
  ])('names where %o is mostly from', (day, text) => {
    expect(deviceLedger(day)).toBe(text);
  });
});
