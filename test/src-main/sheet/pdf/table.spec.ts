import { describe, expect, it } from 'vitest';
import type { Row, Table } from '../../../../src-main/sheet/content/content.ts';
import { ink, methodColour } from '../../../../src-main/sheet/inks.ts';
import { lookOf } from '../../../../src-main/sheet/pdf/look.ts';
import { tableContent } from '../../../../src-main/sheet/pdf/table.ts';
import { textsOf, valuesOf } from '../../../support/content-text.ts';
import { expectNear } from '../../../support/near.ts';

const look = lookOf('a4', 1);
const row: Row = { method: 'hub', cells: [{ text: 'Hub' }, { text: '−18', fails: true }] };

function table(changes: Partial<Table> = {}): Table {
  return {
    as: 'table',
    title: null,
    size: 'figures',
    columns: [
      { head: 'Scenario', align: 'left', width: 2 },
      { head: 'Margin', align: 'right', width: 1 },
    ],
    rows: [row],
    ...changes,
  };
}

describe('tableContent', () => {
  it('prints red only the figure that fails', () => {
    const passing: Row = { method: 'hub', cells: [{ text: 'Hub' }, { text: '+7', fails: false }] };
    const content = tableContent(table({ rows: [row, passing] }), look);
    expect(valuesOf(content, 'color').filter((colour) => colour === ink.failing)).toHaveLength(1);
  });

  it('has no head where no column needs one, and repeats it on each page where one does', () => {
    const headless = table().columns.map((column) => ({ ...column, head: '' }));
    expect(valuesOf(tableContent(table({ columns: headless }), look), 'headerRows')).toEqual([0]);
    expect(valuesOf(tableContent(table(), look), 'headerRows')).toEqual([1]);
    expect(textsOf(tableContent(table({ rows: [] }), look))).toEqual(['', 'Scenario', 'Margin'].slice(1));
  });

  it('runs each scenario’s colour down the side, and none where rows are no scenario’s', () => {
    const rows = (['hub', 'banks'] as const).map((method) => ({ ...row, method }));
    expect(valuesOf(tableContent(table({ rows }), look), 'fillColor')).toEqual([
      methodColour.hub,
      methodColour.banks,
    ]);
    const own = tableContent(table({ rows: [{ ...row, method: null }] }), look);
    expect(valuesOf(own, 'fillColor')).toEqual([]);
  });

  it('is as wide as the look, columns parted as they ask', () => {
    const [widths] = valuesOf(tableContent(table({ rows: [{ ...row, method: null }] }), look), 'widths');
    const [first, second] = widths as readonly [number, number];
    expectNear(first / second, 2, 1e-9, 'ratio of the widths');
    // Between two columns lies the room of one on each side.
    expect(first + second).toBeLessThan(look.widthPt);
    expect(first + second).toBeGreaterThan(look.widthPt - 10);
  });

  it('puts a drawing between a figure and what is said below it', () => {
    const drawn = { heightPt: () => 9, svg: (widthPt: number) => `<svg width="${widthPt}"/>` };
    const cells = [{ text: 'Hub' }, { text: '264', under: ['of 328'], drawn }];
    const [, stack] = valuesOf(tableContent(table({ rows: [{ ...row, cells }] }), look), 'stack');
    expect(stack).toMatchObject([{ text: '264' }, { height: 9 }, { text: 'of 328' }]);
  });
});

describe('methodColour', () => {
  // Okabe & Ito, Color Universal Design (2008): blue, bluish green and reddish purple as published;
  // the orange #e69f00 is darkened for paper, our own choice.
  it('takes the published colour-blind-safe set', () => {
    expect(methodColour).toMatchObject({ banks: '#0072b2', hub: '#009e73', mix: '#cc79a7' });
  });
});
