import { describe, expect, it } from 'vitest';
import type { Comparison } from '../../../shared-types/comparison.ts';
import { displayWidth } from '../../../src-main/sheet/plain-text.ts';
import { comparisonText } from '../../../src-main/sheet/text.ts';
import { comparisonFixture, scenarioFixture } from '../../support/comparison-fixture.ts';

const stamp = { madeOn: '2027-04-18', version: '0.1.0' };
const widestLine = 100;
const longLabel = 'Two 20 Ah banks with a 65 W wall charger and every cable, for the way to Łódź and 電池';

function linesOf(comparison: Comparison): string[] {
  return comparisonText(comparison, stamp).split('\n');
}

/** A comparison of six with everything as long as the catalogue allows. */
function widest(): Comparison {
  const { cost } = scenarioFixture('banks');
  const scenarios = Array.from({ length: 6 }, (_, index) =>
    scenarioFixture('banks', {
      id: `scenario-${index}`,
      label: longLabel,
      cost: { ...cost, toBuy: { minor: 123_456_789, currency: 'CHF' } },
      margin: {
        ...{ value: 3, capped: true, usual: 3, usualCapped: true },
        limitedBy: { device: longLabel, day: 366 },
      },
      firstShort: { device: longLabel, day: 366, earliestDay: 365 },
    }),
  );
  return comparisonFixture({ scenarios, cautions: [longLabel.repeat(3)] });
}

describe('comparisonText', () => {
  it('stays in 100 columns with the longest labels', () => {
    for (const line of linesOf(widest())) expect(displayWidth(line)).toBeLessThanOrEqual(widestLine);
  });

  it('prints what to know of the legs, and no heading without it', () => {
    const { legs } = scenarioFixture('panel');
    const noted = legs.map((leg) => ({ ...leg, notes: ['The station is far.'] }));
    const panel = scenarioFixture('panel', { legs: noted });
    expect(comparisonText(comparisonFixture({ scenarios: [panel] }), stamp)).toContain(
      'On the legs\n- Coast, Passes: The station is far.',
    );
    expect(comparisonText(comparisonFixture(), stamp)).not.toContain('On the legs');
  });

  it('lets no control character of a label through', () => {
    const text = comparisonText(
      comparisonFixture({ scenarios: [scenarioFixture('hub', { label: '\u001b[31mHub\u0007' })] }),
      stamp,
    );
    expect(text.replaceAll('\n', '')).not.toMatch(/\p{Cc}/u);
  });

  it('says so where no limit was found', () => {
    const margin = { value: 3, capped: true, limitedBy: null, usual: 3, usualCapped: true };
    const hub = scenarioFixture('hub', { margin });
    const lines = linesOf(comparisonFixture({ scenarios: [hub] }));
    expect(lines).toContainEqual(
      expect.stringMatching(/Generator hub .*more than \+300 % {2}more than \+300 %$/u),
    );
    expect(lines.join(' ').replaceAll('   ', ' ')).toContain('Margin: no limit found.');
  });

  it('names amounts left out of a price', () => {
    const { cost } = scenarioFixture('hub');
    const notConverted = [{ minor: 12_000, currency: 'CHF' }];
    const hub = scenarioFixture('hub', { cost: { ...cost, notConverted } });
    expect(comparisonText(comparisonFixture({ scenarios: [hub] }), stamp)).toContain(
      'Generator hub: not converted and not in its price: 120 CHF.',
    );
  });

  it('opens with tour, answer and reason', () => {
    const text = comparisonText(comparisonFixture(), stamp);
    const places = ['Coast and passes: 24 days', 'Take the generator hub.', 'It carries every must-have'].map(
      (part) => text.indexOf(part),
    );
    expect(places[0]).toBe(0);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it('shows the four figures of every scenario', () => {
    expect(linesOf(comparisonFixture()).slice(7, 13)).toEqual([
      'Rank  Scenario                To buy  Grams  Front g  Margin  Usual',
      '----  ---------------------  -------  -----  -------  ------  -----',
      '   1  Generator hub          264 EUR    714      444   +31 %  +44 %',
      '   2  Two banks               49 EUR    853        0    +7 %  +19 %',
      '   3  Panel and buffer bank   99 EUR  1,031        0   −18 %   −4 %',
      'Margin: carried in 90 of 100 histories; usual: in half of them.',
    ]);
  });

  it('says how often something runs flat and what is left at worst', () => {
    const text = linesOf(comparisonFixture()).join(' ').replaceAll('   ', ' ');
    expect(text).toContain(
      'Panel and buffer bank: a must-have runs flat in 58 of 100 histories (51 to 65), the phone first, on day 9; at the earliest day 6; lowest reserve 0 Wh (0 to 14). Margin: limited by Phone, day 9.',
    );
    expect(text).toContain('Two banks: a must-have runs flat in none of 200 histories (0 to 2 of 100)');
  });

  it('shows the mean day of every scenario', () => {
    // Wall: 4 nights of 44 Wh, 176 Wh and 84 Wh in 24 days, by hand from the fixture.
    const lines = linesOf(comparisonFixture());
    const ledger = lines.slice(lines.indexOf('Mean Wh a day'));
    expect(ledger[1]).toBe('Rank  Scenario                Use  Wall  Panel   Hub  Lost  Spilled  Unserved');
    expect(ledger[3]).toMatch(/Generator hub {10}30\.9 {3}7\.3 {4}0\.0 {2}29\.0 /u);
    expect(ledger[4]).toMatch(/Two banks {14}30\.9 {2}29\.3 {4}0\.0 {3}0\.0 /u);
    expect(ledger[5]).toMatch(/Panel and buffer bank {2}30\.9 {2}14\.0 {3}15\.0 {3}0\.0 /u);
  });

  it('closes with cautions, reminder, version and date', () => {
    const text = comparisonText(comparisonFixture(), stamp);
    for (const caution of comparisonFixture().cautions) expect(text).toContain(`- ${caution}`);
    expect(text).toMatch(
      /Estimates, not guarantees: carry a reserve\.\nChargewright 0\.1\.0, made on 18 April 2027\n$/u,
    );
  });

  it('uses ordinary spaces only', () => {
    expect(comparisonText(comparisonFixture(), stamp)).not.toMatch(/[\u00a0\u202f]/u);
  });
});
