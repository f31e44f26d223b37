import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Comparison } from '../../../shared-types/comparison.ts';
import { comparisonText } from '../../../src-main/sheet/text.ts';
import { comparisonFixture, scenarioFixture } from '../../support/comparison-fixture.ts';
import { contentOf } from '../../support/sheet-matter.ts';

const widestLine = 100;
const longestLabel = 80;

function textOf(comparison: Partial<Comparison> = {}): string {
  return comparisonText(contentOf(comparison));
}

/** Lines joined again, so that a sentence is found wherever it was broken. */
function said(comparison: Partial<Comparison> = {}): string {
  return textOf(comparison).replace(/\s+/gu, ' ');
}

/** Cells of a terminal, counted apart from the code under test: Han characters take two. */
function cells(line: string): number {
  return line.length + (line.match(/\p{Script=Han}/gu)?.length ?? 0);
}

/** A comparison of six in which every label is the one given. */
function labelled(label: string): Comparison {
  const scenarios = Array.from({ length: 6 }, (_, index) => {
    const { cost, mass, legs, stopRules, air } = scenarioFixture('panel');
    return scenarioFixture('panel', {
      id: `scenario-${index}`,
      label,
      carries: label,
      cost: { ...cost, toBuy: { minor: 123_456_789, currency: 'CHF' } },
      mass: { ...mass, lines: mass.lines.map((line) => ({ ...line, label })) },
      legs: legs.map((leg) => ({ ...leg, leg: label, notes: [label] })),
      margin: { value: 3, capped: true, usual: 3, usualCapped: true, limitedBy: { device: label, day: 366 } },
      firstShort: { device: label, day: 366, earliestDay: 365 },
      stopRules: {
        ...stopRules,
        leg: label,
        banks: stopRules.banks.map((bank) => ({ ...bank, bank: label })),
      },
      air: { ...air, lines: air.lines.map((line) => ({ ...line, label })) },
    });
  });
  const assumptions = [{ name: label, value: label, basis: 'rider', source: label }] as const;
  const { tour } = comparisonFixture();
  const advice = { answer: label, why: label, notes: [label] };
  return comparisonFixture({
    scenarios,
    assumptions,
    cautions: [label],
    advice,
    tour: { ...tour, label, summary: label },
  });
}

describe('comparisonText', () => {
  it.each([
    'Two 20 Ah banks with a 65 W wall charger and every cable, on the way to Łódź'.padEnd(longestLabel, '.'),
    'W'.repeat(longestLabel),
    '電'.repeat(longestLabel),
    '電池 '.repeat(26),
  ])('stays in 100 columns with the label %s', (label) => {
    for (const line of textOf(labelled(label)).split('\n'))
      expect(cells(line)).toBeLessThanOrEqual(widestLine);
  });

  it('lets no control character of a label through', () => {
    const control = fc.constantFrom(
      '\u001b[31m',
      '\u0007',
      '\r',
      '\n',
      '\t',
      '\u0000',
      '\u009b',
      '\u2028',
      '\u202e',
    );
    const label = fc.array(fc.oneof(control, fc.constantFrom('Hub', ' ', 'é')), { maxLength: 8 });
    fc.assert(
      fc.property(label, (parts) => {
        const scenarios = [scenarioFixture('hub', { label: parts.join('') })];
        expect(textOf({ scenarios, cautions: [parts.join('')] }).replaceAll('\n', '')).not.toMatch(
          /[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]/u,
        );
      }),
      { numRuns: 8 },
    );
  });

  it('uses ordinary spaces only', () => {
    expect(textOf()).not.toMatch(/[\u00a0\u202f]/u);
  });

  it('says what could not be shown, and never a programmer’s word', () => {
    const none = textOf({ scenarios: [], scores: [], assumptions: [], cautions: [] });
    expect(none).not.toMatch(/undefined|null|NaN|\[object/u);
    expect(none).not.toContain('By air');
  });

  it('names amounts left out of a price, and where no limit was found', () => {
    const { cost } = scenarioFixture('hub');
    const notConverted = [{ minor: 12_000, currency: 'CHF' }];
    const margin = { value: 3, capped: true, limitedBy: null, usual: 3, usualCapped: true };
    const text = said({ scenarios: [scenarioFixture('hub', { cost: { ...cost, notConverted }, margin })] });
    expect(text).toContain('and 120 CHF');
    expect(text).toContain('no limit found');
  });

  it('opens with title, tour, answer and reason', () => {
    const lines = textOf().split('\n');
    expect(lines[0]).toBe('Comparison sheet: Coast and passes');
    expect(lines[1]).toMatch(/^24 days from 3 May/u);
    const text = said();
    const places = [
      'Take the generator hub.',
      'It carries every must-have',
      '- The banks are the cheapest',
      'Scorecard',
    ].map((part) => text.indexOf(part));
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });

  it('shows the figures of every scenario', () => {
    const text = said();
    for (const { label, mass } of comparisonFixture().scenarios) {
      expect(text).toContain(label);
      expect(text).toContain(`Carried, g: ${mass.carriedG.toLocaleString('en-GB')}`);
    }
    expect(text).toContain('+31 %; +44 % in half of them; limited by Phone, day 19');
    expect(text).toContain('58 of 100; 51 to 65; the phone first, on day 9; at the earliest day 6');
  });

  it('sets what fits as a table, its columns under each other', () => {
    const lines = textOf({ scenarios: [scenarioFixture('hub', { label: 'Hub' })] }).split('\n');
    const head = lines.find((line) => /^Leg +Days +Use/u.test(line));
    expect(head).toBeDefined();
    const ledger = lines.slice(lines.indexOf(head!) + 2);
    // Wall: 4 nights of 44 Wh in 24 days, the hub 29 Wh each day, by hand from the fixture.
    expect(ledger[0]).toMatch(/^Hub +24 +30\.9 +7\.3 +0\.0 +29\.0 /u);
    const end = (line: string, figure: string): number => line.indexOf(figure) + figure.length;
    expect(end(ledger[0]!, '30.9')).toBe(end(head!, 'Use'));
  });

  it('closes with cautions, reminder, version and date', () => {
    const text = said();
    for (const caution of comparisonFixture().cautions) expect(text).toContain(`- ${caution}`);
    expect(textOf()).toMatch(
      /Estimates, not guarantees: carry a reserve\.\nChargewright 0\.1\.0, made on 18 April 2027\n$/u,
    );
  });
});
