import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import type { BreakEvenMap } from '../../../../shared-types/break-even.ts';
import BreakEvenFigure from '../../../../src-renderer/views/trade-offs/break-even-figure.svelte';
import { mapCell, smallMap } from '../../../support/map-fixture.ts';

function shown(map: BreakEvenMap): string {
  return render(BreakEvenFigure, { props: { map } }).body.replaceAll(/<!--.*?-->/gu, '');
}

const words = (html: string): string =>
  html
    .replaceAll(/<[^>]+>/gu, ' ')
    .replaceAll(/\s+/gu, ' ')
    .trim();

describe('the figure of the break-even map', () => {
  const body = shown(smallMap());

  it('has the finding for its title, and says what it was drawn from', () => {
    expect(body).toMatch(
      /<h3[^>]*>Banks only leads up to 2 days; beyond that Panel \+ buffer bank leads<\/h3>/u,
    );
    expect(words(body)).toMatch(/Forest hills and vineyards, from .* 60 histories in steps of 60 min/u);
  });

  it('has a row a length and a column a gap, with letter and lead in each cell', () => {
    expect(words(body)).toContain('Days of the tour 1 5 2 A 10 A 10 14 A 10 B 35');
  });

  it('names every cell in a sentence, and lets the tab key reach one', () => {
    expect(body.match(/aria-label="[AB] \d+: \d+.days/gu)).toHaveLength(4);
    expect(body.match(/tabindex="0"/gu)).toHaveLength(1);
    expect(body.match(/tabindex="-1"/gu)).toHaveLength(3);
  });

  it('says what letters stand for, and of marks only those it shows', () => {
    expect(words(body)).toContain('A Banks only B Panel + buffer bank');
    expect(words(body)).not.toMatch(/none carries the plan|only another carries/u);
    const marked = words(
      shown(
        smallMap({
          cells: [
            mapCell(2, 1, 'demo-banks', { carrying: 'none' }),
            mapCell(2, 5, 'demo-banks', { carrying: 'another' }),
            mapCell(14, 1, 'demo-banks'),
            mapCell(14, 5, null, { carrying: 'none', margin: null }),
          ],
        }),
      ),
    );
    expect(marked).toMatch(/none carries the plan.*only another carries/u);
    expect(marked).toContain('2 (A) A* 10 14 A 10 –');
  });

  it('hatches the cells that none carries', () => {
    const cells = smallMap().cells.map((cell) => ({ ...cell, carrying: 'none' as const }));
    expect(shown(smallMap({ cells })).match(/class="[^"]*\bnone\b/gu)).toHaveLength(4);
  });

  it('lists where the leader changes', () =>
    expect(words(body)).toContain('With a wall every night: Banks only at any length.'));
});
