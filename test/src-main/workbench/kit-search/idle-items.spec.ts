import { describe, expect, it } from 'vitest';
import { demoItems } from '../../../../db/demo/demo.ts';
import type { Rules } from '../../../../shared-types/scenario.ts';
import { kitsOf, type Kit } from '../../../../src-main/model/judge/kit-search/kit-space.ts';
import { drawnTours } from '../../../../src-main/workbench/ground.ts';
import { hasIdleItem, type IdleGround } from '../../../../src-main/workbench/kit-search/idle-items.ts';
import { kitJob } from '../../../../src-main/workbench/kit-search/kit-job.ts';
import type { PreparedSearch } from '../../../../src-main/workbench/kit-search/prepare-search.ts';
import { searchOptions } from '../../../../src-main/workbench/kit-search/search-options.ts';
import { demoSettings } from '../../../../db/demo/demo.ts';
import { smallSearch } from './small-search.ts';

const { options } = searchOptions(demoItems, [], demoSettings);

interface Around {
  readonly unsteadySource?: Rules['unsteadySource'];
  readonly hasOutlets?: boolean;
  readonly hasDirectLoads?: boolean;
  readonly options?: IdleGround['options'];
}

/** Whether a kit of these items has one that does nothing. */
function idle(ids: readonly string[], around: Around = {}): boolean {
  const { unsteadySource = 'bank-only', ...rest } = around;
  const ground = { options, rules: { unsteadySource }, hasOutlets: true, hasDirectLoads: false, ...rest };
  return hasIdleItem({ counts: ground.options.map(({ item }) => Number(ids.includes(item.id))) }, ground);
}

const [bank, panel, hub, converter] = ['demo-bank-20', 'demo-panel-20', 'demo-hub-3', 'demo-converter'];

describe('hasIdleItem()', () => {
  it('finds a panel or a hub whose power nothing may take', () => {
    expect(idle([panel])).toBe(true);
    expect(idle([panel, bank])).toBe(false);
    expect(idle([panel], { unsteadySource: 'device-too' })).toBe(false);
    expect(idle([hub, converter])).toBe(true);
    expect(idle([hub, converter, bank])).toBe(false);
  });

  it('finds a hub without a converter, and the other way round', () => {
    expect(idle([hub, bank])).toBe(true);
    expect(idle([converter, bank])).toBe(true);
  });

  it('knows that a hub runs a load without a battery whatever the rule', () =>
    expect(idle([hub, converter], { hasDirectLoads: true })).toBe(false));

  it('finds a charger where there is nothing to plug it into', () => {
    expect(idle(['demo-charger-30'])).toBe(false);
    expect(idle(['demo-charger-30'], { hasOutlets: false })).toBe(true);
  });

  it('leaves what must come alone, and what is neither bought nor weighs', () => {
    const must = options.map((option) => (option.item.id === panel ? { ...option, least: 1 } : option));
    expect(idle([panel], { options: must })).toBe(false);
    const nothing = { toBuyMinor: 0, grams: 0, frontWheelGrams: 0 };
    const free = options.map((option) => (option.item.id === panel ? { ...option, each: nothing } : option));
    expect(idle([panel], { options: free })).toBe(false);
  });

  it('leaves alone what takes more off the bicycle than it adds', () => {
    const lighter = { toBuyMinor: 100, grams: -50, frontWheelGrams: -50 };
    const net = options.map((option) => (option.item.id === hub ? { ...option, each: lighter } : option));
    expect(idle([hub, bank], { options: net })).toBe(false);
  });
});

/** Idle kits looked at in each catalogue, spread over all. */
const looked = 12;

describe('a kit with an idle item', { timeout: 30_000 }, () => {
  it.each([1, 2, 3, 4, 5, 6])('has the margin of a smaller one in catalogue %i', (seed) => {
    const search = smallSearch(seed);
    const rungs = rungOf(search);
    const worth = new Map(search.kits.map((kit) => [kit.counts.join(), kit]));
    const idleKits = kitsOf(search.options, ({ counts }) => !worth.has(counts.join()));
    const every = Math.ceil(idleKits.length / looked);
    expect(idleKits.length).toBe(search.idle);
    for (const kit of idleKits.filter((_, at) => at % every === 0)) {
      const within = search.kits.filter(({ counts }) =>
        counts.every((count, at) => count <= kit.counts[at]!),
      );
      const largest = within.toSorted((a, b) => itemsOf(b) - itemsOf(a))[0]!;
      expect(rungs(largest)).toBe(rungs(kit));
    }
  });
});

const itemsOf = ({ counts }: Kit): number => counts.reduce((sum, count) => sum + count, 0);

/** The margin of a kit by its rung, walked by itself. */
function rungOf({ kitGround }: PreparedSearch): (kit: Kit) => number {
  const settle = kitJob(drawnTours());
  return (kit) => {
    const [verdict] = settle({ ...kitGround, kits: [kit], found: [] }, () => undefined);
    if (verdict?.as !== 'found') throw new Error('A kit with nothing to pass has a margin.');
    return verdict.marginRung;
  };
}
