import { describe, expect, it } from 'vitest';
import { foundFigure } from '../../../../src-renderer/views/kit-search/found-figure.ts';
import { foundKit, searchResult } from '../../support/fake-kits.ts';

const palette = (property: string): string => property;
const figure = foundFigure(searchResult(), 'EUR', 'en');
const seriesOf = (result = searchResult()) => foundFigure(result, 'EUR', 'en').draw(palette).data.datasets;

describe('the figure of found kits', () => {
  it('has the finding for its title, and a legend of the methods it shows', () => {
    expect(figure.title).toContain('the lightest that carries the plan weighs 910');
    expect(figure.subtitle).toContain('EUR');
    expect(figure.legend.map(({ label }) => label)).toEqual(['Banks only', 'Panel and buffer bank']);
  });

  it('draws a mark a kit, at its price and grams, by method', () => {
    expect(seriesOf().map(({ data }) => data)).toEqual([[{ x: 0, y: 350 }], [{ x: 84, y: 910 }]]);
  });

  it('draws a larger mark for more margin', () => {
    const kits = [-1, 0, 0.5, 3].map((value) => foundKit({ margin: { value, capped: false } }));
    const [series] = seriesOf(searchResult({ kits }));
    const radii = (series as { pointRadius?: unknown }).pointRadius as number[];
    expect(radii).toEqual(radii.toSorted((a, b) => a - b));
    expect(radii[0]).toBeGreaterThan(0);
    expect(radii.at(-1)).toBeGreaterThan(radii[1]!);
  });

  it('has the figures behind it in a table, margins in whole points', () => {
    // 0.15 is told as 15, not as what 1.15 - 1 is in binary.
    const kits = [foundKit({ margin: { value: 1.15 - 1, capped: false } })];
    expect(foundFigure(searchResult({ kits }), 'EUR').table()).toEqual({
      columns: ['Kit', 'To buy, EUR', 'g', 'Front, g', 'Margin, points'],
      rows: [['20 Ah bank; 20 W panel', 84, 910, 42, 15]],
    });
  });
});
