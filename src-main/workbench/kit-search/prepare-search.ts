import { randomUUID } from 'node:crypto';
import { fliesAsPacked } from '../../../shared-types/air-check.ts';
import { formatNumber, wordsLocale } from '../../../shared-types/figures.ts';
import { mostKitsSearched, type KitSearchRequest } from '../../../shared-types/kit-search.ts';
import type { Limits } from '../../../shared-types/limits.ts';
import { toMajor } from '../../../shared-types/money.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import type { Scenario } from '../../../shared-types/scenario.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { listScenarios } from '../../catalogue/scenarios.ts';
import { airCheck } from '../../model/judge/air-transport.ts';
import { kitCount, kitsOf, type Kit } from '../../model/judge/kit-search/kit-space.ts';
import { rungAtLeast } from '../../model/judge/kit-search/rung-margin.ts';
import { airLines } from '../assemble/air-lines.ts';
import { travellingItems, type CarriedItem } from '../assemble/kit.ts';
import type { TourModel } from '../assemble/tour.ts';
import type { ComparisonGround } from '../ground.ts';
import { prepareGround } from '../prepare-ground.ts';
import { hasIdleItem } from './idle-items.ts';
import type { KitGround } from './kit-shop.ts';
import { searchOptions, type SearchOption, type SearchOptions } from './search-options.ts';

/** A search ready to start. */
export interface PreparedSearch extends SearchOptions {
  readonly ground: ComparisonGround;
  readonly kitGround: KitGround;
  /** Allowed and worth a walk, in the order of the search. */
  readonly kits: readonly Kit[];
  /** Allowed, and beaten without a walk. */
  readonly idle: number;
}

/** Reads what a search needs; says what is missing, or too much. `kitsPerSecond`: what this computer has managed. */
export function prepareSearch(
  catalogue: OpenedCatalogue,
  request: KitSearchRequest,
  kitsPerSecond: number,
): Outcome<PreparedSearch> {
  const scenario = listScenarios(catalogue.read).find(({ id }) => id === request.scenarioId);
  if (scenario === undefined)
    return failure('not-found', 'That scenario is not in the catalogue (any more).');
  const prepared = prepareGround(catalogue, request.tourId);
  if (!prepared.ok) return prepared;
  const { ground, model } = prepared.value;
  const chosen = searchOptions(ground.items, request.choices, ground.settings);
  const refused = refusal(chosen.options, kitsPerSecond);
  return refused ?? success(ready(ground, model, scenario, chosen, request.limits));
}

function refusal(options: readonly SearchOption[], kitsPerSecond: number): Outcome<never> | null {
  if (options.length === 0)
    return failure(
      'bad-input',
      'There is nothing to put a kit together from: own or consider a bank, a panel, a hub or a charger, and leave it in the search.',
    );
  const kits = kitCount(options);
  if (kits <= mostKitsSearched) return null;
  const count = (value: number): string => formatNumber(value, { locale: wordsLocale });
  const open = options.filter(({ least, most }) => most > least).length;
  return failure(
    'bad-input',
    `${open} items that may come or not make ${count(kits)} kits, about ${howLong(kits / kitsPerSecond)} on this computer. At most ${count(mostKitsSearched)} are searched: say of more items that they must come or stay out.`,
    [
      {
        path: 'choices',
        allowed: `choices that leave at most ${count(mostKitsSearched)} kits`,
        got: count(kits),
      },
    ],
  );
}

const [minute, hour, day, year] = [60, 3600, 86_400, 31_557_600] as const;

function howLong(seconds: number): string {
  const units = [
    [year, 'years'],
    [day, 'days'],
    [hour, 'hours'],
    [minute, 'minutes'],
  ] as const;
  const [length, name] = units.find(([each]) => seconds >= 2 * each) ?? [1, 'seconds'];
  return `${formatNumber(Math.round(seconds / length), { locale: wordsLocale })} ${name}`;
}

function ready(
  ground: ComparisonGround,
  { timeline, tour }: TourModel,
  { placement, rules }: Scenario,
  chosen: SearchOptions,
  limits: Limits,
): PreparedSearch {
  const { options } = chosen;
  const idleGround = {
    ...{ options, rules },
    hasOutlets: timeline.outlets.some((outlets) => outlets > 0),
    hasDirectLoads: travellingItems(ground.items, tour.leftAtHome).some(
      ({ capacity }) => (capacity.as === 'wh' ? capacity.wh : capacity.mAh) === 0,
    ),
  };
  const allowed = kitsOf(options, withinLimits(options, limits, ground));
  const kits = allowed.filter((kit) => !hasIdleItem(kit, idleGround));
  const kitGround = {
    searchId: randomUUID(),
    ground,
    scenario: { placement, rules },
    itemIds: options.map(({ item }) => item.id),
    leastRung: limits.margin === null ? 0 : rungAtLeast(1 + limits.margin),
    riddenG: options.reduce((sum, { most, each }) => sum + most * each.grams, 0),
  };
  return { ...chosen, ground, kitGround, kits, idle: allowed.length - kits.length };
}

function withinLimits(
  options: readonly SearchOption[],
  limits: Limits,
  { settings, items, tour }: ComparisonGround,
): (kit: Kit) => boolean {
  const within = (value: number, limit: number | null): boolean => limit === null || value <= limit;
  return (kit) =>
    ofKind(kit, options, 'generator-hub') <= 1 &&
    ofKind(kit, options, 'converter') <= 1 &&
    within(toMajor({ minor: kit.toBuyMinor, currency: settings.currency }), limits.toBuy) &&
    within(kit.grams, limits.grams) &&
    within(kit.frontWheelGrams, limits.frontWheelGrams) &&
    (!limits.byAir || fliesAsPacked(airCheck(airLines(linesOf(kit, options), items, tour.leftAtHome))));
}

function ofKind(kit: Kit, options: readonly SearchOption[], kind: 'generator-hub' | 'converter'): number {
  return options.reduce((sum, { item }, option) => sum + (item.kind === kind ? kit.counts[option]! : 0), 0);
}

/** The items of a kit, with what comes along with them. */
export function linesOf(
  { counts }: Pick<Kit, 'counts'>,
  options: readonly SearchOption[],
): readonly CarriedItem[] {
  return options.flatMap(({ item, along }, option) => {
    const carried = counts[option]!;
    return carried === 0 ? [] : [item, ...along].map((each) => ({ item: each, carried }));
  });
}
