import { describe, expect, it } from 'vitest';
import type { Block, List } from '../../../../src-main/sheet/content/content.ts';
import { ink } from '../../../../src-main/sheet/inks.ts';
import { sectionContent } from '../../../../src-main/sheet/pdf/blocks.ts';
import { breakableHeading, lookOf } from '../../../../src-main/sheet/pdf/look.ts';
import { textsOf, valuesOf } from '../../../support/content-text.ts';

const look = lookOf('a4', 1);

function laidOut(...blocks: readonly Block[]): unknown {
  return sectionContent({ heading: 'Heading', blocks }, look);
}

function list(items: readonly string[], changes: Partial<List> = {}): List {
  return { as: 'list', title: null, items, look: 'plain', ...changes };
}

describe('sectionContent', () => {
  it('is nothing, not even a heading, without a block', () => {
    expect(textsOf(laidOut())).toEqual([]);
  });

  it('lets neither its heading nor the title of a block stand alone at the foot of a page', () => {
    const content = laidOut(list(['One.'], { title: 'Title' }));
    expect(valuesOf(content, 'headlineLevel')).toEqual([breakableHeading, breakableHeading]);
    expect(textsOf(content).filter((text) => text === 'Title')).toHaveLength(1);
  });

  it('lets what is longer than a page be torn, and keeps what is short whole', () => {
    const kept = (count: number) =>
      valuesOf(
        laidOut({ as: 'abreast', parts: [list(Array<string>(count).fill('A step of some words.'))] }),
        'unbreakable',
      );
    expect(kept(300)).toEqual([false]);
    expect(kept(4)).toEqual([true]);
  });

  it('sets three beside each other, a short row as wide as a full one', () => {
    const parts = ['a', 'b', 'c', 'd'].map((item) => list([item]));
    const rows = valuesOf(laidOut({ as: 'abreast', parts }), 'columns');
    expect(rows.map((columns) => (columns as unknown[]).length)).toEqual([3, 3]);
  });

  it('prints each caution beside an ochre bar', () => {
    const content = laidOut(list(['Mind the cells.', 'Mind the spokes.'], { look: 'caution' }));
    expect(valuesOf(content, 'fillColor')).toEqual([ink.accent, ink.accent]);
    expect(textsOf(content)).toEqual(expect.arrayContaining(['Mind the cells.', 'Mind the spokes.']));
  });

  it('parts what is looked up into two columns about as long, and loses none of it', () => {
    const items = Array.from({ length: 9 }, (_, at) => `Figure ${at}: ${'word '.repeat(at)}`);
    const [columns] = valuesOf(laidOut(list(items, { look: 'reference' })), 'columns') as [
      readonly unknown[],
    ];
    const [left, right] = columns.map((column) => textsOf(column));
    expect([...left!, ...right!]).toEqual(items);
    const letters = (texts: readonly string[]): number => texts.join('').length;
    // No more apart than the longest of them.
    expect(Math.abs(letters(left!) - letters(right!))).toBeLessThanOrEqual(
      Math.max(...items.map(({ length }) => length)) + 1,
    );
  });

  it.each([0, 1])('lays out a list of %i to be looked up', (count) => {
    const items = Array<string>(count).fill('Alone.');
    expect(textsOf(laidOut(list(items, { look: 'reference' })))).toEqual(['Heading', ...items]);
  });
});
