import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { usualRules } from '../../../../shared-types/scenario.ts';
import type { DaysSpan, LightRow } from '../../../../shared-types/stop-rules.ts';
import { bankLights } from '../../../../src-main/workbench/stop-rules/bank-lights.ts';
import { expectNear } from '../../../support/near.ts';
import { bankLine, chargerLine, delivering, panelLine } from './rules-ground.ts';

const use = { mustHaveWh: 20, sourcesWh: 0 };

function rowsOf(lights: number, of: typeof use = use): readonly LightRow[] {
  return bankLights([bankLine({ lights })], usualRules, of)[0]!.rows;
}

describe('bankLights()', () => {
  it('is nothing of a kit without a bank', () =>
    expect(bankLights([chargerLine()], usualRules, use)).toEqual([]));

  it('has no rows for a bank without lights, only what it gives when full', () => {
    expect(bankLights([bankLine({ lights: 0 }, 2)], usualRules, use)).toEqual([
      { bank: 'Bank', pieces: 2, fullWh: 60, rows: [] },
    ]);
  });

  it('takes the measured delivery, else the label by health and the way out', () => {
    // 10 Ah at 3.7 V are 37 Wh; nine tenths of them, of which 0.85 come out: 28.305 Wh.
    const labelled = bankLine({
      ...{ capacity: { as: 'mah', mAh: 10_000, cellV: 3.7 }, health: 0.9, measuredDeliverableWh: null },
    });
    const [first, second] = bankLights([bankLine(delivering(44)), labelled], usualRules, use);
    expectNear(first!.fullWh, 44, 1e-9, 'measured, Wh at the plug');
    expectNear(second!.fullWh, 28.305, 1e-9, 'by label, Wh at the plug');
  });

  it('reads a single light as anything up to full', () => {
    expect(rowsOf(1)).toEqual([
      {
        ...{ lit: 1, of: 1, lowWh: 0, highWh: 60 },
        ...{ alone: { lowDays: 0, highDays: 3 }, withSources: null },
      },
    ]);
  });

  it('reads three of four lights as half to three quarters: 30 to 45 Wh, 1.5 to 2.25 days of 20 Wh', () => {
    const rows = rowsOf(4);
    expect(rows.map(({ lit }) => lit)).toEqual([4, 3, 2, 1]);
    expect(rows[1]).toMatchObject({ lowWh: 30, highWh: 45, alone: { lowDays: 1.5, highDays: 2.25 } });
  });

  it('shows a display in per cent by quarters', () => {
    const rows = rowsOf(100);
    expect(rows.map(({ lit, of }) => [lit, of])).toEqual([
      [100, 100],
      [75, 100],
      [50, 100],
      [25, 100],
    ]);
    expectNear(rows[1]!.lowWh, 0.74 * 60, 1e-9, 'least at 75 %, Wh');
  });

  it('counts no days where the must-haves use nothing', () => {
    const rows = bankLights([bankLine(), panelLine], usualRules, { mustHaveWh: 0, sourcesWh: 9 })[0]!.rows;
    expect(rows.map(({ alone, withSources }) => [alone, withSources])).toEqual(rows.map(() => [null, null]));
  });
});

describe('bankLights() with a panel', () => {
  const lines = [panelLine, bankLine({ efficiencyIn: 0.8, efficiencyOut: 0.5, ...delivering(60) })];
  const fullRow = (sourcesWh: number, unsteadySource: 'bank-only' | 'device-too') =>
    bankLights(lines, { ...usualRules, unsteadySource }, { mustHaveWh: 20, sourcesWh })[0]!.rows[0]!;

  it('takes off what the bank passes on: 25 Wh by 0.8 by 0.5 leave 10 of 20 Wh a day', () => {
    const { withSources } = fullRow(25, 'bank-only');
    expect(withSources?.as).toBe('days');
    if (withSources?.as !== 'days') return;
    expectNear(withSources.lowDays, 4.5, 1e-9, 'from, days');
    expectNear(withSources.highDays, 6, 1e-9, 'to, days');
  });

  it('takes off all of it where the panel feeds devices too', () => {
    const { withSources } = fullRow(8, 'device-too');
    if (withSources?.as !== 'days') throw new Error('8 Wh do not carry 20 Wh');
    expectNear(withSources.highDays, 5, 1e-9, 'to, days');
  });

  it('says so where the sources alone give what is used', () => {
    expect(fullRow(50.001, 'bank-only').withSources).toEqual({ as: 'sources' });
    expect(fullRow(21, 'device-too').withSources).toEqual({ as: 'sources' });
  });

  it('never goes on for ever by a use that is next to nothing', () => {
    expect(fullRow(20 - 1e-300, 'device-too').withSources).toEqual({ as: 'sources' });
    const [bank] = bankLights(lines, usualRules, { mustHaveWh: 1e-310, sourcesWh: 0 });
    expect(bank!.rows[0]!.alone).toBeNull();
  });

  it('lasts no longer by a panel that gives nothing', () => {
    const { alone, withSources } = fullRow(0, 'bank-only');
    expect(withSources).toEqual({ as: 'days', ...alone });
  });
});

describe('any bank', () => {
  const anyBank = fc.record({
    lights: fc.integer({ min: 0, max: 100 }),
    wh: fc.double({ min: 0, max: 300, noNaN: true }),
    mustHaveWh: fc.double({ min: 0.1, max: 100, noNaN: true }),
    sourcesWh: fc.double({ min: 0, max: 100, noNaN: true }),
  });
  const spansOf = (row: LightRow): readonly DaysSpan[] =>
    [row.alone, row.withSources].filter((span) => span !== null && 'lowDays' in span);

  it('never has a low end above the high one, fewer days by more lights, or days that are not its watt-hours', () => {
    fc.assert(
      fc.property(anyBank, ({ lights, wh, ...given }) => {
        const [bank] = bankLights([panelLine, bankLine({ lights, ...delivering(wh) })], usualRules, given);
        bank!.rows.forEach((row, at) => {
          expect(row.lowWh).toBeLessThanOrEqual(row.highWh);
          expect(row.highWh).toBeLessThanOrEqual(bank!.fullWh * (1 + 1e-12));
          spansOf(row).forEach((span, which) => {
            expect(span.lowDays).toBeLessThanOrEqual(span.highDays);
            expect(Number.isFinite(span.highDays)).toBe(true);
            const more = at === 0 ? undefined : spansOf(bank!.rows[at - 1]!)[which];
            if (more !== undefined) expect(span.lowDays).toBeLessThanOrEqual(more.lowDays);
          });
          expectNear(row.alone!.lowDays * given.mustHaveWh, row.lowWh, 1e-9, 'low end, Wh');
          expectNear(row.alone!.highDays * given.mustHaveWh, row.highWh, 1e-9, 'high end, Wh');
        });
      }),
    );
  });
});
