import { createContext } from 'svelte';
import type { Station } from '../../shared-types/climate.ts';
import type { About, Invoke } from '../../shared-types/contract.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import type { Preferences, Settings } from '../../shared-types/settings.ts';
import type { Tour } from '../../shared-types/tour.ts';
import { BreakEvenState } from './break-even.svelte.ts';
import { Calls } from './calls.ts';
import { ComparisonState, type ComparisonSubject } from './comparison.svelte.ts';
import { InventoryState } from './inventory.svelte.ts';
import { KitSearchState } from './kit-search.svelte.ts';
import { NoticesState } from './notices.svelte.ts';
import { ScenariosState } from './scenarios.svelte.ts';
import { SettingsState } from './settings.svelte.ts';
import { SwingsState } from './swings.svelte.ts';
import { ToursState } from './tours.svelte.ts';
import { TrackDropState } from './track-drop.svelte.ts';
import { UpgradeState } from './upgrade.svelte.ts';

/** Everything the screens show, wired so that each stored change runs the comparison again. */
export class AppState {
  readonly notices = new NoticesState();
  readonly trackDrop = new TrackDropState(this.notices);
  readonly calls: Calls;
  readonly inventory: InventoryState;
  readonly tours: ToursState;
  readonly scenarios: ScenariosState;
  readonly settings: SettingsState;
  readonly comparison: ComparisonState;
  readonly kitSearch: KitSearchState;
  readonly breakEven: BreakEvenState;
  readonly swings: SwingsState;
  readonly upgrade: UpgradeState;
  about = $state.raw<About | null>(null);
  stations = $state.raw<readonly Station[]>([]);
  ready = $state(false);

  constructor(invoke: Invoke, themeChosen: (theme: Settings['theme']) => void) {
    this.calls = new Calls(invoke, this.notices);
    const changed = (): void => this.#changed();
    const groundChanged = (): void => {
      this.kitSearch.outdate();
      changed();
    };
    this.inventory = new InventoryState(this.calls, groundChanged);
    this.tours = new ToursState(this.calls, groundChanged);
    this.scenarios = new ScenariosState(this.calls, () => {
      this.kitSearch.reconsider(this.scenarios.rows.all);
      changed();
    });
    this.settings = new SettingsState(this.calls, (now, before) => {
      themeChosen(now.theme);
      if (before !== null && changesFigures(now, before)) groundChanged();
      if (before !== null && differ(now.preferences, before.preferences)) this.upgrade.outdate();
    });
    const sources = {
      subject: () => this.subject,
      unstoredPreferences: () =>
        this.settings.waiting ? (this.settings.current?.preferences ?? null) : null,
    };
    this.comparison = new ComparisonState(this.calls, sources);
    this.kitSearch = new KitSearchState(this.calls);
    this.breakEven = new BreakEvenState(this.calls, sources);
    this.upgrade = new UpgradeState(this.calls, {
      items: () => this.inventory.rows.all,
      scenarios: () => this.scenarios.rows.all,
      tours: () => this.tours.rows.all,
    });
    this.swings = new SwingsState(this.calls, {
      comparison: () => this.comparison.current,
      subject: () => this.subject,
      preferences: () => this.settings.current?.preferences ?? null,
    });
  }

  get tour(): Tour | null {
    const chosen = this.settings.current?.tourId ?? null;
    return (chosen === null ? undefined : this.tours.rows.find(chosen)) ?? this.tours.rows.all[0] ?? null;
  }

  get currency(): string {
    return this.settings.current?.currency ?? 'EUR';
  }

  async start(): Promise<void> {
    const { inventory, tours, scenarios, settings } = this;
    await Promise.all([settings.load(), inventory.load(), tours.load(), scenarios.load()]);
    this.ready = true;
    await Promise.all([this.comparison.run(), this.#loadRest()]);
  }

  /** Ranks under new weights and limits; those that pass are stored once the rider pauses. */
  async weigh(preferences: Preferences): Promise<Outcome<unknown>> {
    const outcome = await this.comparison.rank(preferences);
    if (outcome.ok) void this.breakEven.rank(preferences);
    if (outcome.ok || outcome.error.fields.length === 0) this.settings.keepPreferences(preferences);
    return outcome;
  }

  async #loadRest(): Promise<void> {
    const [about, stations] = await Promise.all([
      this.calls.ask('about', {}),
      this.calls.ask('stations.list', {}),
    ]);
    if (about.ok) this.about = about.value;
    if (stations.ok) this.stations = stations.value;
  }

  /** While the lists are still loading there is nothing to run on; `start` runs when they are in. */
  #changed(): void {
    if (!this.ready) return;
    this.breakEven.outdate();
    this.upgrade.outdate();
    this.comparison.request();
  }

  /** What is compared now; null when there is no tour or no scenario. */
  get subject(): ComparisonSubject | null {
    const { rows, compared } = this.scenarios;
    if (this.tour === null || compared.length === 0) return null;
    const all = compared.length === rows.all.length;
    return { tourId: this.tour.id, scenarioIds: all ? null : compared.map(({ id }) => id) };
  }
}

function changesFigures(now: Settings, before: Settings): boolean {
  const plain = ['currency', 'stepMinutes', 'tourId'] as const;
  return (
    plain.some((key) => now[key] !== before[key]) ||
    differ(now.sky, before.sky) ||
    differ(now.risk, before.risk) ||
    differ(now.money, before.money) ||
    differ(now.frontLoad, before.frontLoad)
  );
}

/** Settings come back from the workbench as new objects each time: only what is in them tells. */
function differ(now: unknown, before: unknown): boolean {
  if (!isGroup(now) || !isGroup(before)) return now !== before;
  return Object.keys(now).some((key) => differ(now[key], before[key]));
}

function isGroup(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

export const [useApp, provideApp] = createContext<AppState>();
