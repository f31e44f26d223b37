import { describe, expect, it } from 'vitest';
import type { KitSearchResult } from '../../../../shared-types/kit-search.ts';
import { kitsOf } from '../../../../src-main/model/judge/kit-search/kit-space.ts';
import { useLadder } from '../../../../src-main/model/judge/kit-search/rung-margin.ts';
import type { Crew } from '../../../../src-main/workbench/crew.ts';
import { drawnTours } from '../../../../src-main/workbench/ground.ts';
import { kitJob } from '../../../../src-main/workbench/kit-search/kit-job.ts';
import type { PreparedSearch } from '../../../../src-main/workbench/kit-search/prepare-search.ts';
import { startKitSearch } from '../../../../src-main/workbench/kit-search/search.ts';
import { crewHere } from '../../../support/crew-here.ts';
import { smallSearch } from './small-search.ts';

const ignore = (): void => undefined;

async function searched(search: PreparedSearch, crew: Crew): Promise<KitSearchResult> {
  const outcome = await startKitSearch(search, crew, ignore, () => 0).answer;
  if (!outcome.ok) throw new Error(outcome.error.message);
  return outcome.value;
}

const line = (figures: readonly number[]): string =>
  figures.map((figure) => Math.round(figure * 1000) / 1000).join(' ');

const found = ({ kits }: KitSearchResult): readonly string[] =>
  kits.map(({ toBuy, grams, frontWheelGrams, margin }) =>
    line([toBuy.minor, grams, frontWheelGrams, margin.value + 1]),
  );

/** Every kit walked by itself to its margin, none left out; then each held against each. */
function byBruteForce({ options, kitGround }: PreparedSearch): readonly string[] {
  const settle = kitJob(drawnTours());
  const rows = kitsOf(options, () => true).map((kit) => {
    const [verdict] = settle({ ...kitGround, kits: [kit], found: [] }, ignore);
    if (verdict?.as !== 'found') throw new Error('A kit with nothing to pass has a margin.');
    return [kit.toBuyMinor, kit.grams, kit.frontWheelGrams, useLadder[verdict.marginRung]!] as const;
  });
  const better = (one: (typeof rows)[number], other: (typeof rows)[number]): boolean => {
    const gains = [other[0] - one[0], other[1] - one[1], other[2] - one[2], one[3] - other[3]];
    return gains.every((gain) => gain >= 0) && gains.some((gain) => gain > 0);
  };
  return rows.filter((row) => !rows.some((other) => better(other, row))).map(line);
}

/** A crew of three whose jobs answer in a turned order. */
function untidyCrew(): Crew {
  const here = crewHere();
  let turn = 0;
  return {
    ...here,
    size: 3,
    start: (kind, inputs, watch) => {
      const run = here.start(kind, inputs, watch);
      const waits = (turn += 1) % 3;
      const late = async () => {
        const results = await run.results;
        for (let at = 0; at < waits; at += 1) await new Promise((resolve) => setImmediate(resolve));
        return results;
      };
      return { results: late(), cancel: () => run.cancel() };
    },
  };
}

describe('the kit search', { timeout: 60_000 }, () => {
  it.each(Array.from({ length: 16 }, (_, at) => at + 1))(
    'finds exactly what brute force finds in catalogue %i',
    async (seed) => {
      const search = smallSearch(seed);
      const result = await searched(search, seed % 2 === 0 ? crewHere() : untidyCrew());
      expect(result.complete).toBe(true);
      expect(found(result).toSorted()).toEqual(byBruteForce(search).toSorted());
    },
  );
});
