import { describe, expect, it } from 'vitest';
import type { DayLedger, ScenarioResult } from '../../../../shared-types/comparison.ts';
import { ledgerFinding, storedFinding } from '../../../../src-renderer/views/trade-offs/findings.ts';
import { demoComparison, demoResult } from '../../support/demo-comparison.ts';

const hard = '\u00a0';
const narrow = '\u202f';

function stored(change: Partial<ScenarioResult>): string {
  const scenarios = [demoResult('demo-panel', change), demoResult('demo-banks')];
  return storedFinding({ ...demoComparison(), scenarios }, 'en-GB');
}

describe('storedFinding()', () => {
  it('says so when there is nothing to show', () => {
    expect(storedFinding({ ...demoComparison(), scenarios: [] })).toBe('No scenario to show');
  });

  it('names what runs flat first, and when', () => {
    const text = stored({ firstShort: { device: 'Phone', day: 11 }, lowestStoredWh: 0 });
    expect(text).toBe('With Panel + buffer bank, Phone runs flat on day 11');
  });

  it('tells an empty store from a flat must-have', () => {
    const text = stored({ firstShort: null, lowestStoredWh: 0.01 });
    expect(text).toBe('Panel + buffer bank uses up all it stores, with no must-have flat');
  });

  it('gives the lowest energy stored when all goes well', () => {
    const text = stored({ firstShort: null, lowestStoredWh: 22.4 });
    expect(text).toBe(`Stored energy never falls below 22${hard}Wh with Panel + buffer bank`);
  });

  it('speaks of the scenario that ranks first', () => {
    const scenarios = [demoResult('demo-hub', { firstShort: null, lowestStoredWh: 30 })];
    expect(storedFinding({ ...demoComparison(), scenarios }, 'en-GB')).toContain('Generator hub');
  });
});

const empty: DayLedger = {
  day: 1,
  date: '2027-05-03',
  demand: 20,
  used: 20,
  unserved: 0,
  wall: 0,
  panel: 0,
  hub: 0,
  lost: 0,
  spilled: 0,
  stored: -20,
};

function ledger(...days: Partial<DayLedger>[]): string {
  const filled = days.map((day, i) => ({ ...empty, day: i + 1, ...day }));
  return ledgerFinding(demoResult('demo-panel', { days: filled }), 'en-GB');
}

describe('ledgerFinding()', () => {
  it('puts missing energy before anything else', () => {
    const text = ledger({ panel: 30 }, { unserved: 4.2 }, { unserved: 1 });
    expect(text).toBe(`5.2${hard}Wh cannot be served, on 2 of 3 days`);
  });

  it('does not report rounding as missing energy', () => {
    expect(ledger({ panel: 30, unserved: 0.001 })).not.toContain('cannot be served');
  });

  it('says when nothing comes in at all', () => {
    expect(ledger({}, {})).toBe('Nothing comes in: the tour lives on what was stored');
  });

  it.each([
    [{ wall: 60, panel: 40 }, `Walls give 60${narrow}% of the energy taken in`],
    [{ wall: 25, panel: 75 }, `The panel gives 75${narrow}% of the energy taken in`],
    [{ wall: 10, hub: 90 }, `The hub gives 90${narrow}% of the energy taken in`],
  ])('names the main source of %o', (day, text) => {
    expect(ledger(day)).toBe(text);
  });
});
