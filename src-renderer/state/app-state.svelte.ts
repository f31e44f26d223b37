import { createContext } from 'svelte';
import type { Station } from '../../shared-types/climate.ts';
import type { About, Invoke } from '../../shared-types/contract.ts';
import { isOfDemo } from '../../shared-types/demo-ids.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import type { OwnStart } from '../../shared-types/own-start.ts';
import type { Preferences, Settings } from '../../shared-types/settings.ts';
import type { Tour } from '../../shared-types/tour.ts';
import { BreakEvenState } from './break-even.svelte.ts';
import { Calls } from './calls.ts';
import { alike } from './carry-over.ts';
import { CataloguePlaceState } from './catalogue-place.svelte.ts';
import { ComparisonState, type ComparisonSubject } from './comparison.svelte.ts';
import { DiagnosticsState } from './diagnostics.svelte.ts';
import { draftKindsOf } from './draft-kinds.ts';
import { DraftStore, type Shelf } from './draft-store.ts';
import { EditHistory } from './edit-history.svelte.ts';
import { display } from './display.svelte.ts';
import { ExchangeState } from './exchange.svelte.ts';
import { FieldLogState } from './field-log.svelte.ts';
import { Form } from './form.svelte.ts';
import { InventoryState } from './inventory.svelte.ts';
import { KitSearchState } from './kit-search.svelte.ts';
import { NoticesState } from './notices.svelte.ts';
import { OwnStartState } from './own-start.svelte.ts';
import { screens, type Screen } from './route.svelte.ts';
import { ScenariosState } from './scenarios.svelte.ts';
import { SheetState } from './sheet.svelte.ts';
import { SettingsState } from './settings.svelte.ts';
import { SwingsState } from './swings.svelte.ts';
import { ToursState } from './tours.svelte.ts';
import { TrackDropState } from './track-drop.svelte.ts';
import { tellPutBack, UnstoredDrafts } from './unstored-drafts.ts';
import { UpgradeState } from './upgrade.svelte.ts';

/** What the app needs of the page around it. */
export interface AppPage {
  themeChosen(theme: Settings['theme']): void;
  /** Loads the page anew. */
  reload(): void;
  /** Where drafts are kept over that; throws where there is no such place. */
  shelf(): Shelf;
  copy(text: string): Promise<boolean>;
}

/** Everything the screens show, wired so that each stored change runs the comparison again. */
export class AppState {
  readonly notices = new NoticesState();
  readonly history = new EditHistory(this.notices);
  readonly trackDrop = new TrackDropState(this.notices);
  readonly calls: Calls;
  readonly place: CataloguePlaceState;
  readonly diagnostics: DiagnosticsState;
  readonly inventory: InventoryState;
  readonly fieldLog: FieldLogState;
  readonly tours: ToursState;
  readonly scenarios: ScenariosState;
  readonly settings: SettingsState;
  readonly comparison: ComparisonState;
  readonly kitSearch: KitSearchState;
  readonly breakEven: BreakEvenState;
  readonly swings: SwingsState;
  readonly upgrade: UpgradeState;
  readonly exchange: ExchangeState;
  readonly sheet: SheetState;
  readonly ownStart = new OwnStartState((own) => this.#startOwn(own));
  about = $state.raw<About | null>(null);
  stations = $state.raw<readonly Station[]>([]);
  ready = $state(false);
  /** Weights and limits under the rider's hand; null until the settings are loaded. */
  knobs = $state.raw<Form<Preferences> | null>(null);
  readonly #drafts: UnstoredDrafts;
  /** The catalogue whose drafts are kept; null until those of the page before are back. */
  #keptFor = $state.raw<string | null>(null);

  constructor(invoke: Invoke, page: AppPage) {
    this.calls = new Calls(invoke, this.notices);
    this.place = new CataloguePlaceState(this.calls, {
      reload: () => page.reload(),
      settled: () => this.history.settled(),
    });
    this.diagnostics = new DiagnosticsState(this.calls, (text) => page.copy(text));
    const changed = (): void => this.#changed();
    const groundChanged = (): void => {
      this.kitSearch.outdate();
      changed();
    };
    this.inventory = new InventoryState(this.calls, groundChanged, this.history);
    this.tours = new ToursState(this.calls, groundChanged, this.history);
    const scenariosChanged = (): void => {
      this.kitSearch.reconsider(this.scenarios.rows.all);
      changed();
    };
    this.scenarios = new ScenariosState(this.calls, scenariosChanged, this.history);
    const settingsTaken = (now: Settings, before: Settings | null, restored: boolean): void => {
      page.themeChosen(now.theme);
      display.choose(now);
      this.knobs ??= this.#beginKnobs(now.preferences);
      if (before === null) return;
      if (changesFigures(now, before)) groundChanged();
      if (alike(now.preferences, before.preferences)) return;
      this.upgrade.outdate();
      if (restored) this.#showRestored(now.preferences);
    };
    this.settings = new SettingsState(this.calls, settingsTaken, this.history);
    const sources = {
      subject: () => this.subject,
      unstoredPreferences: () =>
        this.settings.waiting ? (this.settings.current?.preferences ?? null) : null,
    };
    this.comparison = new ComparisonState(this.calls, sources);
    this.fieldLog = new FieldLogState(this.calls, this.history, {
      items: () => this.inventory.rows.all,
      adoptItem: (item) => this.inventory.adopt(item),
      comparison: () => this.comparison,
    });
    this.kitSearch = new KitSearchState(this.calls);
    this.exchange = new ExchangeState(this.calls, this.history, () => this.#reload());
    this.breakEven = new BreakEvenState(this.calls, sources);
    this.upgrade = new UpgradeState(this.calls, {
      items: () => this.inventory.rows.all,
      scenarios: () => this.scenarios.rows.all,
      tours: () => this.tours.rows.all,
    });
    this.sheet = new SheetState(this.calls, () => this.subject);
    this.swings = new SwingsState(this.calls, {
      comparison: () => this.comparison.current,
      subject: () => this.subject,
      preferences: () => this.settings.current?.preferences ?? null,
    });
    this.#drafts = new UnstoredDrafts(new DraftStore(() => page.shelf()), draftKindsOf(this));
  }

  get tour(): Tour | null {
    const chosen = this.settings.current?.tourId ?? null;
    return (chosen === null ? undefined : this.tours.rows.find(chosen)) ?? this.tours.rows.all[0] ?? null;
  }

  get currency(): string {
    return this.settings.current?.currency ?? 'EUR';
  }

  async start(): Promise<void> {
    await this.place.ask();
    if (this.place.trouble !== null) return;
    if (await this.#loadLists()) await this.#putDraftsBack();
    this.ready = true;
    await Promise.all([this.comparison.run(), this.#loadRest()]);
  }

  /** Only with every list read: a draft of a row that was not read would pass for one of a row that is gone. */
  async #putDraftsBack(): Promise<void> {
    const file = this.place.state?.file;
    if (file === undefined || !(await this.#drafts.load(file))) return;
    tellPutBack(this.notices, this.#drafts.putBack(file));
    this.#keptFor = file;
  }

  /** Keeps what is not stored over a page that goes; for an effect. */
  keepDrafts(): void {
    if (this.#keptFor !== null && !this.place.replaced) this.#drafts.keep(this.#keptFor);
  }

  /** The invented tour is among those stored. */
  get hasDemo(): boolean {
    return this.tours.rows.all.some(isOfDemo);
  }

  async bringDemoBack(): Promise<void> {
    const outcome = await this.calls.ask('start.demo', {});
    if (!outcome.ok) return;
    this.history.forget();
    await this.#loadLists();
    this.#changed();
    this.notices.tell('The invented demo is back, and its tour is compared.');
  }

  /** A file was taken in, or back: anything may be another. */
  async #reload(): Promise<void> {
    await this.#loadLists();
    if (this.fieldLog.log !== null) await this.fieldLog.load();
    const preferences = this.settings.current?.preferences;
    if (preferences !== undefined) this.knobs?.adopt(preferences);
    this.kitSearch.outdate();
    this.#changed();
  }

  /** Composes the three named methods from the catalogue, as far as they are not there yet. */
  async addReadyMade(): Promise<void> {
    const outcome = await this.calls.ask('scenarios.addReadyMade', {});
    if (!outcome.ok) return;
    const { added } = outcome.value;
    const words = `Added ${added.length} of the three methods`;
    await this.scenarios.takeMade(added, words);
    this.#changed();
    this.notices.tell(added.length === 0 ? 'Each method that can be made is there already.' : `${words}.`);
  }

  async #startOwn(own: OwnStart): Promise<Outcome<unknown>> {
    const outcome = await this.calls.submit('start.own', { own });
    if (!outcome.ok) return outcome;
    this.history.forget();
    await this.#loadLists();
    this.#changed();
    return outcome;
  }

  /** @returns whether all of them could be read */
  async #loadLists(): Promise<boolean> {
    const { inventory, tours, scenarios, settings } = this;
    const read = await Promise.all([settings.load(), inventory.load(), tours.load(), scenarios.load()]);
    return read.every((each) => each);
  }

  /** Ranks under new weights and limits; those that pass are stored once the rider pauses. */
  async weigh(preferences: Preferences): Promise<Outcome<unknown>> {
    const outcome = await this.comparison.rank(preferences);
    if (outcome.ok) void this.breakEven.rank(preferences);
    if (outcome.ok || outcome.error.fields.length === 0) this.settings.keepPreferences(preferences);
    return outcome;
  }

  /** Something on this screen is refused, not yet stored, or on its way. */
  isUnsaved(screen: Screen): boolean {
    return this.#unsaved[screen]?.() ?? false;
  }

  readonly #unsaved: Readonly<Partial<Record<Screen, () => boolean>>> = {
    start: () => this.ownStart.unsaved,
    inventory: () => this.inventory.unsaved,
    'field-log': () => this.fieldLog.unsaved,
    tours: () => this.tours.unsaved,
    scenarios: () => this.scenarios.unsaved,
    'trade-offs': () => this.settings.waiting || this.knobs?.unsaved === true,
    about: () => this.settings.form?.unsaved === true,
  };

  /** Something would be lost if the window closed now. */
  get unsaved(): boolean {
    if (this.place.replaced) return false;
    return this.history.storing || screens.some((screen) => this.isUnsaved(screen));
  }

  #beginKnobs(preferences: Preferences): Form<Preferences> {
    return new Form(preferences, { root: 'preferences', live: true, store: (draft) => this.weigh(draft) });
  }

  /** Weights that were taken back were ranked under others last. */
  #showRestored(preferences: Preferences): void {
    this.knobs?.adopt(preferences);
    void this.comparison.rank(preferences);
    void this.breakEven.rank(preferences);
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
    !alike(now.sky, before.sky) ||
    !alike(now.risk, before.risk) ||
    !alike(now.money, before.money) ||
    !alike(now.frontLoad, before.frontLoad)
  );
}

export const [useApp, provideApp] = createContext<AppState>();
