import { describe, expect, it } from 'vitest';
import type { Swings } from '../../../../shared-types/swings.ts';
import { swingsSection } from '../../../../src-main/sheet/content/swings.ts';
import { columnOf, columnTexts, paragraphsOf, tableOf, tablesOf } from '../../../support/sheet-section.ts';
import { swingFixture, swingsFixture } from '../../../support/swings-fixture.ts';

// By Unicode name: U+202F NARROW NO-BREAK SPACE, U+00A0 NO-BREAK SPACE, U+2212 MINUS SIGN.
const percentSign = '\u202f%';
const days = '\u00a0days';
const minus = '\u2212';

function sectionOf(changes: Partial<Swings> = {}) {
  return swingsSection({ swings: swingsFixture(changes) });
}

describe('swingsSection', () => {
  it('says why there is nothing to tell instead of a table', () => {
    const why = 'With one scenario there is no order to change.';
    const section = swingsSection({ swings: { why } });
    expect(section.heading).toBe('What would change the answer');
    expect(paragraphsOf(section)).toEqual([why]);
    expect(tablesOf(section)).toEqual([]);
  });

  it('says so when nothing compared rests on what is moved', () => {
    const section = sectionOf({ swings: [] });
    expect(paragraphsOf(section)[0]).toBe(
      'Nothing compared here rests on what is tried: Panel + buffer bank stays first.',
    );
    expect(tableOf(section).rows).toEqual([]);
  });

  it('looks for no flip where the two first are level', () => {
    const section = sectionOf({ level: true, leadPoints: 0 });
    expect(columnTexts(tableOf(section), 'The first gives up')).toEqual(Array(2).fill('level as planned'));
  });

  it('names a scenario that is gone without its key', () => {
    expect(JSON.stringify(sectionOf({ secondId: 'gone' }))).toContain(
      'Panel + buffer bank over a removed scenario',
    );
  });

  it('gives the range, the lead at both ends and where the first gives up its place', () => {
    const section = sectionOf();
    const table = tableOf(section);
    expect(columnTexts(table, 'Assumption')).toEqual(['Days between walls', 'Sun']);
    expect(columnTexts(table, 'Low to high')).toEqual([
      `1\u00a0day to 14${days}`,
      `${minus}15${percentSign} to +15${percentSign}`,
    ]);
    expect(columnTexts(table, 'Lead')).toEqual([`${minus}9 to +70`, '+16 to +30']);
    expect(columnTexts(table, 'The first gives up')).toEqual([
      `at 2${days} or fewer Banks only leads`,
      'none in range',
    ]);
    expect(table.rows.map(({ cells }) => cells.filter(({ drawn }) => drawn !== undefined).length)).toEqual([
      1, 1,
    ]);
    expect(paragraphsOf(section)[0]).toBe(
      `Days between walls decides: at 2${days} or fewer Banks only leads; nothing else in its range does.`,
    );
  });

  it('names the planned value where it has a number, and what turns a flip but the score', () => {
    const swing = swingFixture({
      name: 'Rack factor',
      scale: 'number',
      base: 0.6,
      low: { value: 0.4, leadPoints: -3, leaderId: 'demo-hub' },
      high: { value: 0.9, leadPoints: 31, leaderId: 'demo-panel' },
      flips: [{ side: 'below', value: 0.45, leaderId: 'demo-hub', because: 'the panel falls short' }],
    });
    const table = tableOf(sectionOf({ swings: [swing] }));
    expect(columnTexts(table, 'Low to high')).toEqual(['0.4 to 0.9, planned 0.6']);
    expect(columnOf(table, 'The first gives up')).toEqual([
      { text: 'from 0.45 down Generator hub leads', under: ['since the panel falls short'] },
    ]);
    expect(columnOf(table, 'Range from')[0]!.under).toEqual(['common practice, no source']);
  });

  it('names what was not moved, and why', () => {
    const leftOut = [{ name: 'Price of the hub', why: 'no scenario buys one' }];
    expect(paragraphsOf(sectionOf({ leftOut })).join(' ')).toContain(
      'Not moved, since nothing here rests on it: Price of the hub: no scenario buys one.',
    );
    expect(paragraphsOf(sectionOf()).join(' ')).not.toContain('Not moved');
  });
});
