import { allowedFailures } from '../../model/flow/margin.ts';
import { createState } from '../../model/flow/step-state.ts';
import { walkTour } from '../../model/flow/walk-tour.ts';
import { barFor, type Point } from '../../model/judge/kit-search/frontier.ts';
import type { Kit } from '../../model/judge/kit-search/kit-space.ts';
import { poolCarries, pooledSupply } from '../../model/judge/kit-search/pooled-supply.ts';
import {
  highestCarried,
  highestMonotone,
  topRung,
  useLadder,
  type HardestFirst,
} from '../../model/judge/kit-search/rung-margin.ts';
import type { DrawnTours } from '../ground.ts';
import type { Job } from '../job.ts';
import { kitShop, type KitGround, type KitShop, type LaidKit } from './kit-shop.ts';

/** Some kits of a search. */
export interface KitJob extends KitGround {
  readonly kits: readonly Kit[];
  /** What was found so far: a kit that does not pass it is not walked to its margin. */
  readonly found: readonly Point[];
}

/** What became of a kit. */
export type KitVerdict =
  | { readonly as: 'found'; readonly marginRung: number }
  | { readonly as: 'too-little-supply' }
  | { readonly as: 'stopped-early' };

/** Settles kits one after the other; what kits share is laid out once. */
export function kitJob(tours: DrawnTours): Job<KitJob, readonly KitVerdict[]> {
  let kept: { readonly searchId: string; readonly shop: KitShop; readonly orders: Orders } | null = null;
  return (job, onShare) => {
    if (kept?.searchId !== job.searchId)
      kept = { searchId: job.searchId, shop: kitShop(job, tours(job.ground)), orders: new Map() };
    const { shop, orders } = kept;
    const found = [...job.found];
    return job.kits.map((kit, index) => {
      const verdict = settle(shop, orders, kit, Math.max(barFor(found, kit), job.leastRung - 1));
      if (verdict.as === 'found') found.push({ ...kit, marginRung: verdict.marginRung });
      onShare((index + 1) / job.kits.length);
      return verdict;
    });
  };
}

/** By what a kit lives on: which histories fail soonest. */
type Orders = Map<string, { readonly walks: HardestFirst; readonly pool: HardestFirst }>;

function settle(shop: KitShop, orders: Orders, kit: Kit, bar: number): KitVerdict {
  const floor = Math.max(-1, bar);
  if (floor >= topRung) return { as: 'stopped-early' };
  const laid = shop.lay(kit.counts);
  const order = orderOf(orders, laid);
  const allowed = allowedFailures(laid.histories.length, shop.confidence);
  const pool = poolOf(laid);
  const most = highestMonotone(floor, pool.carries, order.pool, allowed);
  if (most === null) return { as: 'too-little-supply' };
  const { network, course, histories } = laid;
  const state = createState(network, course.steps);
  const carries = (history: number, rung: number): boolean => {
    if (pool.refuses(history, rung)) return false;
    walkTour(network, course, histories[history]!, useLadder[rung]!, state, null);
    return state.flatStep < 0;
  };
  const marginRung = highestCarried(floor, most, carries, order.walks, allowed);
  return marginRung === null ? { as: 'stopped-early' } : { as: 'found', marginRung };
}

function orderOf(orders: Orders, { livesOn, histories }: LaidKit) {
  const inOrder = (): HardestFirst => Array.from(histories.keys());
  const order = orders.get(livesOn) ?? { walks: inOrder(), pool: inOrder() };
  orders.set(livesOn, order);
  return order;
}

/** What the pooled kit carries, each history tried no more than it takes. */
function poolOf({ network, course, histories, pooled }: LaidKit) {
  const pool = pooledSupply(network, course);
  const carried = new Int16Array(histories.length).fill(-1);
  const refused = new Int16Array(histories.length).fill(topRung + 1);
  return {
    carries: (history: number, rung: number): boolean => {
      if (rung <= carried[history]!) return true;
      if (rung >= refused[history]!) return false;
      const holds = poolCarries(pool, pooled[history]!, useLadder[rung]!);
      if (holds) carried[history] = rung;
      else refused[history] = rung;
      return holds;
    },
    /** Known to be refused, so that the kit itself need not be walked. */
    refuses: (history: number, rung: number): boolean => rung >= refused[history]!,
  };
}
