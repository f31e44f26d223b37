import { describe, expect, it } from 'vitest';
import type { ScenarioResult } from '../../shared-types/comparison.ts';
import { storedFinding } from '../../shared-types/stored-finding.ts';
import { demoComparison, demoResult } from '../src-renderer/support/demo-comparison.ts';

const hard = '\u00a0';

function stored(change: Partial<ScenarioResult>): string {
  const scenarios = [demoResult('demo-panel', change), demoResult('demo-banks')];
  return storedFinding({ ...demoComparison(), scenarios }, 'en-GB');
}

describe('storedFinding()', () => {
  it('says so when there is nothing to show', () => {
    expect(storedFinding({ ...demoComparison(), scenarios: [] })).toBe('No scenario to show');
  });

  it('tells the risk, and what runs flat first', () => {
    const text = stored({
      risk: { share: 0.04, low: 0.0204, high: 0.0769 },
      firstShort: { device: 'Phone', day: 11, earliestDay: 8 },
    });
    expect(text).toBe(
      'With Panel + buffer bank a must-have runs flat in 4 of 100 histories (2 to 8), the phone first, on day 11; at the earliest day 8',
    );
  });

  it('tells an empty store from a flat must-have', () => {
    const text = stored({ firstShort: null, reserveWh: { p10: 0.01, p50: 9, p90: 20 } });
    expect(text).toBe('Panel + buffer bank uses up all it stores in some histories, with no must-have flat');
  });

  it('gives what 90 of 100 histories keep when all goes well', () => {
    const text = stored({ firstShort: null, reserveWh: { p10: 22.4, p50: 30, p90: 41 } });
    expect(text).toBe(`Panel + buffer bank keeps 22${hard}Wh or more in store in 90 of 100 histories`);
  });
});
