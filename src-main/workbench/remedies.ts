import { randomUUID } from 'node:crypto';
import type { Remedies, ScenarioResult } from '../../shared-types/comparison.ts';
import type { Item, ItemKind } from '../../shared-types/item.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import type { Crew, CrewRun } from './crew.ts';
import type { FiguresJob } from './figures-job.ts';
import type { ComparisonGround } from './ground.ts';
import type { KitFigures } from './kit-figures.ts';
import { withOneMoreWall, type OneMoreWall } from './one-more-wall.ts';

/** A source of energy that a kit might still take; what it needs to work comes with it. */
interface OneMoreItem {
  readonly label: string;
  readonly scenario: Scenario;
}

/** What is tried to let the nearest scenario carry a plan that none carries. */
export interface Trial {
  readonly nearest: Scenario;
  readonly night: OneMoreWall | null;
  readonly items: readonly OneMoreItem[];
}

/** More would keep the rider waiting for an answer that names one or two. */
const mostItemsTried = 8;
const kindsTried: readonly ItemKind[] = ['bank', 'panel', 'generator-hub', 'wall-charger'];

/** What to try; null when a scenario carries the plan, or there is none. */
export function trialOf(
  { tour, items }: ComparisonGround,
  scenarios: readonly Scenario[],
  results: readonly ScenarioResult[],
): Trial | null {
  if (results.length === 0 || results.some(({ margin }) => margin.value >= 0)) return null;
  const best = results.reduce((a, b) => (b.margin.value > a.margin.value ? b : a));
  const nearest = scenarios.find(({ id }) => id === best.id);
  if (nearest === undefined) return null;
  return {
    nearest,
    night: withOneMoreWall(tour),
    items: itemsBeside(nearest, items).slice(0, mostItemsTried),
  };
}

/** Tries all of it side by side, each judged as a scenario is. */
export function startTrial(ground: ComparisonGround, trial: Trial, crew: Crew): CrewRun<KitFigures> {
  return crew.start('figures', jobsOf(ground, trial), { onProgress: () => undefined });
}

/** Margins are all that is asked for. */
const asksDaysWithoutWall = false;

function jobsOf(ground: ComparisonGround, { nearest, night, items }: Trial): readonly FiguresJob[] {
  const ofNight =
    night === null
      ? []
      : [
          {
            ground: { ...ground, groundId: randomUUID(), tour: night.tour },
            scenario: nearest,
            asksDaysWithoutWall,
          },
        ];
  return [...ofNight, ...items.map(({ scenario }) => ({ ground, scenario, asksDaysWithoutWall }))];
}

/** Puts what came out into the words of the contract. */
export function remediesOf({ nearest, night, items }: Trial, figures: readonly KitFigures[]): Remedies {
  const remedyAt = (index: number) => {
    const { values, capped } = figures[index]!;
    return { margin: values.margin, capped };
  };
  const before = night === null ? 0 : 1;
  return {
    scenarioId: nearest.id,
    moreNight: night === null ? null : { afterDay: night.afterDay, ...remedyAt(0) },
    items: items.map(({ label }, index) => ({ label, ...remedyAt(before + index) })),
  };
}

function itemsBeside(nearest: Scenario, items: readonly Item[]): readonly OneMoreItem[] {
  const carried = new Set(nearest.kit.map(({ itemId }) => itemId));
  const has = (kind: ItemKind): boolean => items.some((item) => item.kind === kind && carried.has(item.id));
  const spare = items.filter(({ id, state }) => state !== 'retired' && !carried.has(id));
  const converter = spare.find(({ kind }) => kind === 'converter');
  return (
    spare
      .filter(({ kind }) => kindsTried.includes(kind))
      // A bicycle has one front wheel.
      .filter(({ kind }) => kind !== 'generator-hub' || !has('generator-hub'))
      .toSorted((a, b) => a.price.minor - b.price.minor)
      .map((item) => {
        const needed = item.kind === 'generator-hub' && !has('converter') ? converter : undefined;
        return withItems(nearest, needed === undefined ? [item] : [item, needed]);
      })
  );
}

function withItems(scenario: Scenario, added: readonly Item[]): OneMoreItem {
  return {
    label: added.map(({ label }) => label).join(' and '),
    scenario: {
      ...scenario,
      kit: [...scenario.kit, ...added.map(({ id }) => ({ itemId: id, quantity: 1 }))],
    },
  };
}
