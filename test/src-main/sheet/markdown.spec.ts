import { describe, expect, it } from 'vitest';
import type { Comparison } from '../../../shared-types/comparison.ts';
import { sheetContent } from '../../../src-main/sheet/content/sheet-content.ts';
import { comparisonMarkdown } from '../../../src-main/sheet/markdown.ts';
import { comparisonFixture, scenarioFixture } from '../../support/comparison-fixture.ts';
import { contentOf, matterFixture } from '../../support/sheet-matter.ts';

const nasty =
  'A|B *bold* _it_ # head `code` ~~no~~ <script>alert(1)</script> [go](x) \\ \n## next\r\n| cell |';

function markdownOf(comparison: Partial<Comparison> = {}): string {
  return comparisonMarkdown(contentOf(comparison));
}

/** A comparison whose every label is nasty. */
function nastyComparison(): Comparison {
  const { stopRules, mass, margin, legs } = scenarioFixture('hub');
  const hub = scenarioFixture('hub', {
    label: nasty,
    carries: nasty,
    margin: { ...margin, limitedBy: { device: nasty, day: 3 } },
    mass: { ...mass, lines: mass.lines.map((line) => ({ ...line, label: nasty })) },
    legs: legs.map((leg) => ({ ...leg, leg: nasty, notes: [nasty] })),
    stopRules: { ...stopRules, leg: nasty, banks: stopRules.banks.map((bank) => ({ ...bank, bank: nasty })) },
  });
  const { tour } = comparisonFixture();
  return comparisonFixture({
    scenarios: [hub, scenarioFixture('panel', { label: nasty })],
    tour: { ...tour, label: nasty, summary: nasty },
    advice: { answer: nasty, why: nasty, notes: [nasty] },
    cautions: [nasty],
  });
}

/** Signs of Markdown that no backslash makes plain. */
function live(text: string): string {
  return text.replace(/\\[!-/:-@[-`{-~]/gu, '');
}

/** Runs of lines that begin with a pipe. */
function tablesIn(markdown: string): readonly (readonly string[])[] {
  return [...markdown.matchAll(/(?:^\|.*\n)+/gmu)].map(([table]) => table.trimEnd().split('\n'));
}

describe('a label that could turn into Markdown', () => {
  const markdown = markdownOf(nastyComparison());

  it('breaks no table: each row has the pipes of its head', () => {
    expect(tablesIn(markdown).length).toBeGreaterThan(4);
    for (const table of tablesIn(markdown)) {
      const pipes = table.map((line) => live(line).split('|').length);
      expect(new Set(pipes).size, table[0]).toBe(1);
    }
  });

  it('makes no heading but the sheet’s own', () => {
    const headings = (of: string) => of.split('\n').filter((line) => /^ {0,3}#{1,6} /u.test(line)).length;
    expect(headings(markdown)).toBe(headings(markdownOf()));
  });

  it('brings in no markup, no code, no link and no stress', () => {
    const left = live(markdown).replaceAll('<br>', '').replaceAll(/\*\*/gu, '');
    expect(left).not.toMatch(/[<>`[\]_~]/u);
    // The reminder alone is stressed.
    expect(left.match(/\*/gu)).toHaveLength(2);
    expect(markdown.match(/<(?!br>)/gu)?.length).toBe(markdown.match(/\\</gu)?.length);
  });

  it('stays readable: what is escaped is all there', () => {
    expect(live('a\\|b')).toBe('ab');
    expect(markdown.replace(/\\([!-/:-@[-`{-~])/gu, '$1')).toContain(
      'A|B *bold* _it_ # head `code` ~~no~~ <script>',
    );
  });
});

describe('comparisonMarkdown', () => {
  it('has a head and no row when nothing was compared', () => {
    const none = comparisonMarkdown(
      sheetContent(
        matterFixture({
          comparison: comparisonFixture({ scenarios: [], scores: [], assumptions: [] }),
          swings: { why: 'Nothing was compared.' },
        }),
      ),
    );
    expect(none).toContain('# Comparison sheet: Coast and passes');
    expect(none).toContain('Nothing was compared.');
    expect(none).not.toMatch(/undefined|null|NaN|\[object/u);
  });

  it('leads with title, tour and answer, and closes with the reminder and its date', () => {
    const lines = markdownOf().split('\n');
    expect(lines[0]).toBe('# Comparison sheet: Coast and passes');
    expect(lines[4]).toMatch(/^\*\*Take the generator hub\.\*\* It carries every must-have/u);
    expect(lines.at(-2)).toBe(
      '*Estimates, not guarantees: carry a reserve.* Chargewright 0.1.0, made on 18 April 2027',
    );
    expect(lines.at(-1)).toBe('');
  });

  it('rules each table below its head, figures to the right', () => {
    const [scorecard] = tablesIn(markdownOf());
    expect(scorecard).toHaveLength(5);
    expect(scorecard![1]).toMatch(/^\|( (---|---:) \|)+$/u);
    expect(scorecard![2]).toContain('| 264<br>of 328 | 714 | 444 | +31\u202f%');
  });

  it('leaves out columns of drawings and what explains them', () => {
    const markdown = markdownOf();
    expect(markdown).not.toMatch(/svg|amber|pale bar/iu);
    for (const [head] of tablesIn(markdown)) expect(head).not.toMatch(/\|\s+\|/u);
  });
});
