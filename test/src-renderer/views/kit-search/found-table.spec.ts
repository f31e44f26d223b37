import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import type { KitSearchResult } from '../../../../shared-types/kit-search.ts';
import FoundTable from '../../../../src-renderer/views/kit-search/found-table.svelte';
import { foundKit, searchResult } from '../../support/fake-kits.ts';

function shown(result: KitSearchResult): string {
  const { body } = render(FoundTable, { props: { result, currency: 'EUR', keep: () => undefined } });
  return body.replaceAll(/<!--.*?-->/gu, '');
}

const words = (html: string): string =>
  html
    .replaceAll(/<[^>]+>/gu, ' ')
    .replaceAll(/\s+/gu, ' ')
    .trim();

describe('the table of found kits', () => {
  it('has a row a kit, the most margin first, with what is to be bought of it', () => {
    const [, first, second] = shown(searchResult()).split('<tr').slice(1).map(words);
    expect(first).toMatch(/20 Ah bank; 20 W panel 20 W panel at least \+30 % 84 910 42 Keep as scenario/u);
    expect(second).toMatch(/20 Ah bank nothing at least −35 % 0 350 16 Keep as scenario/u);
  });

  it('says in its heads what it is sorted by, and which way', () => {
    const heads = shown(searchResult()).match(/<th scope="col" class="numeric[^>]*>/gu) ?? [];
    expect(heads.filter((head) => head.includes('aria-sort="descending"'))).toHaveLength(1);
    expect(heads.filter((head) => head.includes('aria-sort'))).toHaveLength(1);
  });

  it('shows both of two kits that nothing but their items tells apart', () => {
    const twin = foundKit({
      items: foundKit().items.map((item) => ({ ...item, itemId: `${item.itemId}-2` })),
    });
    expect(shown(searchResult({ kits: [foundKit(), twin] })).match(/<tr/gu)).toHaveLength(3);
  });

  it('names the kit that each button keeps', () =>
    expect(words(shown(searchResult()))).toContain('Keep as scenario : 20 Ah bank; 20 W panel'));
});
