import type { FoundKit, KitSearchResult, SearchTally } from '../../../shared-types/kit-search.ts';
import { success } from '../../../shared-types/outcome.ts';
import type { Method } from '../../../shared-types/scenario.ts';
import { unbeaten, type Point } from '../../model/judge/kit-search/frontier.ts';
import type { Kit } from '../../model/judge/kit-search/kit-space.ts';
import { topRung, useLadder } from '../../model/judge/kit-search/rung-margin.ts';
import type { CarriedItem } from '../assemble/kit.ts';
import type { Crew, CrewRun } from '../crew.ts';
import type { LongRun } from '../run-book.ts';
import type { KitVerdict } from './kit-job.ts';
import { linesOf, type PreparedSearch } from './prepare-search.ts';

/** A search under way: what it has found can be asked for at any time. */
export interface KitSearch extends LongRun<KitSearchResult> {
  soFar(): KitSearchResult;
}

/** Kits handed to a worker at a time: few, so that it soon hears what the others have found. */
const kitsAJob = 24;

type FoundPoint = Kit & Point;

/** Where a search stands. */
interface Course {
  next: number;
  settled: number;
  stopped: boolean;
  readonly found: FoundPoint[];
  readonly counts: Record<KitVerdict['as'], number>;
}

/**
 * Searches all kits, several chunks side by side, each told what was found before it. A search that is stopped answers what it
 * has.
 *
 * @param nowMs a clock
 */
export function startKitSearch(
  prepared: PreparedSearch,
  crew: Crew,
  onShare: (share: number) => void,
  nowMs: () => number,
): KitSearch {
  const { kits, kitGround } = prepared;
  const startedMs = nowMs();
  const course: Course = {
    ...{ next: 0, settled: 0, stopped: false, found: [] },
    counts: { found: 0, 'too-little-supply': 0, 'stopped-early': 0 },
  };
  const underWay = new Set<CrewRun<readonly KitVerdict[]>>();
  const chunk = async (): Promise<void> => {
    const from = course.next;
    const mine = kits.slice(from, from + kitsAJob);
    course.next += mine.length;
    const job = { ...kitGround, kits: mine, found: unbeaten(course.found) };
    const run = crew.start('kits', [job], { onProgress: () => undefined });
    underWay.add(run);
    const verdicts = await run.results;
    underWay.delete(run);
    if (verdicts === null) course.stopped = true;
    else take(course, mine, verdicts[0]!);
    onShare(course.settled / kits.length);
  };
  const hand = async (): Promise<void> => {
    while (!course.stopped && course.next < kits.length) await chunk();
  };
  const soFar = (): KitSearchResult => resultOf(prepared, course, (nowMs() - startedMs) / msPerSecond);
  const work = Promise.all(Array.from({ length: crew.size }, hand));
  return {
    soFar,
    answer: work.then(() => success(soFar())),
    cancel: () => {
      course.stopped = true;
      for (const run of underWay) run.cancel();
    },
  };
}

const msPerSecond = 1000;

function take(course: Course, kits: readonly Kit[], verdicts: readonly KitVerdict[]): void {
  verdicts.forEach((verdict, index) => {
    course.settled += 1;
    course.counts[verdict.as] += 1;
    if (verdict.as === 'found') course.found.push({ ...kits[index]!, marginRung: verdict.marginRung });
  });
}

function resultOf(prepared: PreparedSearch, course: Course, seconds: number): KitSearchResult {
  const { settings } = prepared.ground;
  return {
    kits: unbeaten(course.found)
      .toSorted((a, b) => b.marginRung - a.marginRung || a.toBuyMinor - b.toBuyMinor)
      .map((point) => foundKit(point, prepared)),
    tally: tallyOf(prepared, course),
    complete: course.settled === prepared.kits.length,
    seconds,
    confidence: settings.risk.confidence,
    histories: settings.sky.histories,
    otherMoney: prepared.otherMoney.map(({ label }) => label),
  };
}

function tallyOf({ kits, idle }: PreparedSearch, { counts }: Course): SearchTally {
  return {
    kits: kits.length + idle,
    walked: counts.found,
    idleItem: idle,
    tooLittleSupply: counts['too-little-supply'],
    stoppedEarly: counts['stopped-early'],
  };
}

function foundKit(point: FoundPoint, { options, ground }: PreparedSearch): FoundKit {
  const lines = linesOf(point, options);
  return {
    items: lines.map(({ item, carried }) => ({
      itemId: item.id,
      label: item.label,
      quantity: carried,
      owned: item.state === 'owned',
    })),
    method: methodOf(lines),
    toBuy: { minor: point.toBuyMinor, currency: ground.settings.currency },
    grams: point.grams,
    frontWheelGrams: point.frontWheelGrams,
    margin: { value: useLadder[point.marginRung]! - 1, capped: point.marginRung === topRung },
  };
}

function methodOf(lines: readonly CarriedItem[]): Method {
  const carries = (kind: CarriedItem['item']['kind']): boolean =>
    lines.some(({ item }) => item.kind === kind);
  const [panel, hub] = [carries('panel'), carries('generator-hub')];
  if (panel && hub) return 'mix';
  if (panel) return 'panel';
  return hub ? 'hub' : 'banks';
}
