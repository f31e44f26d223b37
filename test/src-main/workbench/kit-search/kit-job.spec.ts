import { describe, expect, it } from 'vitest';
import type { Kit } from '../../../../src-main/model/judge/kit-search/kit-space.ts';
import { topRung } from '../../../../src-main/model/judge/kit-search/rung-margin.ts';
import { drawnTours } from '../../../../src-main/workbench/ground.ts';
import { kitJob, type KitJob } from '../../../../src-main/workbench/kit-search/kit-job.ts';
import { smallSearch } from './small-search.ts';

const ignore = (): void => undefined;

/** The verdicts on some kits of a small search. */
function settled(
  choose: (kits: readonly Kit[]) => readonly Kit[],
  change: Partial<KitJob> = {},
  onShare: (share: number) => void = ignore,
) {
  const { kits, kitGround } = smallSearch(3);
  return kitJob(drawnTours())({ ...kitGround, kits: choose(kits), found: [], ...change }, onShare);
}

const all = (kits: readonly Kit[]): readonly Kit[] => kits;
const first = (kits: readonly Kit[]): readonly Kit[] => kits.slice(0, 1);
const last = (kits: readonly Kit[]): readonly Kit[] => kits.slice(-1);
/** What every kit costs and weighs more than. */
const nothing = { toBuyMinor: -1, grams: -1, frontWheelGrams: -1 };

describe('kitJob()', () => {
  it('settles each kit in its order, and says how far it is', () => {
    const shares: number[] = [];
    const verdicts = settled(all, {}, (share) => shares.push(share));
    expect(verdicts.length).toBeGreaterThan(10);
    expect(shares).toEqual(verdicts.map((_, at) => (at + 1) / verdicts.length));
  });

  it('says of the cheapest and lightest, which has nothing to pass, its margin', () =>
    expect(settled(first)[0]!.as).toBe('found'));

  it('walks no kit that would have to pass the most a margin is told to', () => {
    const verdicts = settled(all, { found: [{ ...nothing, marginRung: topRung }] });
    expect(new Set(verdicts.map(({ as }) => as))).toEqual(new Set(['stopped-early']));
  });

  it('finds of a kit that passes the bar the same margin as without one, and nothing of one that does not', () => {
    const [alone] = settled(last);
    if (alone?.as !== 'found') throw new Error('It has nothing to pass.');
    const { marginRung } = alone;
    expect(settled(last, { found: [{ ...nothing, marginRung: marginRung - 1 }] })).toEqual([alone]);
    expect(settled(last, { found: [{ ...nothing, marginRung }] })[0]!.as).not.toBe('found');
  });

  it('finds no kit below the least margin that the rider takes, and those above as they are', () => {
    const [alone] = settled(last);
    if (alone?.as !== 'found') throw new Error('It has nothing to pass.');
    expect(settled(last, { leastRung: alone.marginRung })).toEqual([alone]);
    expect(settled(last, { leastRung: alone.marginRung + 1 })[0]!.as).not.toBe('found');
  });
});
