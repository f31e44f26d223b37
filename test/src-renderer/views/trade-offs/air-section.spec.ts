import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import type { AirLine } from '../../../../shared-types/air-check.ts';
import type { ScenarioResult } from '../../../../shared-types/comparison.ts';
import { airCheck } from '../../../../src-main/model/judge/air-transport.ts';
import AirSection from '../../../../src-renderer/views/trade-offs/air-section.svelte';
import { scenarioFixture } from '../../../support/comparison-fixture.ts';

const bank = (labelWh: number, count: number): AirLine => ({
  label: 'Bank',
  kind: 'power-bank',
  count,
  labelWh,
});
const phone: AirLine = { label: 'Phone', kind: 'in-device', count: 1, labelWh: 17 };

const scenarios: readonly ScenarioResult[] = [
  scenarioFixture('banks', { air: airCheck([bank(37, 3), phone]) }),
  scenarioFixture('panel', { air: airCheck([bank(120, 1), phone]) }),
  scenarioFixture('hub', { air: airCheck([phone]) }),
];

/** The words of the section, without its marks. */
function words(shown: readonly ScenarioResult[]): string {
  const { body } = render(AirSection, { props: { scenarios: shown } });
  return body
    .replaceAll(/<!--.*?-->|<[^>]+>/gu, ' ')
    .replaceAll(/\s+/gu, ' ')
    .trim();
}

describe('the section "By air"', () => {
  it('is left out where there is nothing to compare', () => expect(words([])).toBe(''));

  it('never promises that anything flies, and says who decides', () => {
    const all = words(scenarios);
    expect(all).not.toMatch(/safe to fly|\bsafe|allowed to fly|may fly|can fly/iu);
    expect(all).toContain('airlines and states may be stricter: ask the airline');
    expect(all).toContain('They decide');
  });

  it('tells of each scenario what it carries and what must be done', () => {
    const all = words(scenarios);
    expect(all).toContain('3 × Bank: 37 Wh each Does not fly as packed: 3 power banks, at most 2 a person.');
    expect(all).toContain('Bank: 120 Wh Needs the airline’s approval: Bank (over 100 Wh).');
    expect(all).toContain('no power bank Nothing here is over the limits listed.');
  });

  it('lists the devices of the tour once', () => {
    expect(words(scenarios).split('Phone: 17 Wh')).toHaveLength(2);
  });

  it('holds every rule with its source, and a date where the source names one', () => {
    const all = words(scenarios);
    for (const { text, source } of scenarios[0]!.air.rules) {
      expect(all).toContain(text);
      expect(all).toContain(source);
    }
    expect(all).toMatch(/2026/u);
  });
});
