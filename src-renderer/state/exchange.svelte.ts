import type { CallInput } from '../../shared-types/contract.ts';
import type {
  EntryPlace,
  ExchangeEntry,
  ExchangePreview,
  ExchangeTaking,
  Fate,
} from '../../shared-types/exchange.ts';
import { formatNumber } from '../../shared-types/figures.ts';
import { failure, type Outcome } from '../../shared-types/outcome.ts';
import type { Calls } from './calls.ts';
import { chooseFile, type ChosenFile } from './choose-file.ts';
import type { EditHistory } from './edit-history.svelte.ts';
import { handOver } from './hand-over.ts';
import { placeKey, withDependents } from './left-out.ts';
import { listPlace } from './row-steps.ts';
import { noMembers, withMembers } from './with-members.ts';

/** A choice of what to take of a file, and the file. */
type Taking = CallInput<'exchange.take'>;

export function countOfEntries(count: number): string {
  return count === 1 ? '1 entry' : `${formatNumber(count)} entries`;
}

/** The whole catalogue on its way out to a file, and a file on its way in. Kept while other screens are open. */
export class ExchangeState {
  file = $state.raw<ChosenFile | null>(null);
  preview = $state.raw<ExchangePreview | null>(null);
  /** Which entries are listed. */
  shown = $state<Fate | 'all'>('all');
  passOverRefused = $state(false);
  /** A taking is on its way. */
  storing = $state(false);
  /** What the rider leaves out, by place. */
  #unchecked = $state.raw<ReadonlySet<string>>(noMembers);
  readonly #out = $derived(withDependents(this.preview?.entries ?? [], this.#unchecked));
  readonly #toTake = $derived(
    (this.preview?.entries ?? []).filter((entry) => isTakeable(entry) && !this.#out.has(placeKey(entry))),
  );
  readonly #calls: Calls;
  readonly #history: EditHistory;
  /** Reads every list anew and compares again. */
  readonly #reload: () => Promise<void>;

  constructor(calls: Calls, history: EditHistory, reload: () => Promise<void>) {
    this.#calls = calls;
    this.#history = history;
    this.#reload = reload;
  }

  /** Refused entries that would keep the rest from being stored; settings are not asked for as a rule. */
  get refused(): readonly ExchangeEntry[] {
    const entries = this.preview?.entries ?? [];
    return entries.filter(({ fate, list }) => fate === 'refused' && list !== 'settings');
  }

  get toTake(): number {
    return this.#toTake.length;
  }

  get canTake(): boolean {
    return this.toTake > 0 && !this.storing && (this.refused.length === 0 || this.passOverRefused);
  }

  isOut(entry: EntryPlace): boolean {
    return this.#out.has(placeKey(entry));
  }

  /** The first entry left out without which this one cannot be taken; undefined where it stands on its own. */
  heldBackBy({ needs }: ExchangeEntry): ExchangeEntry | undefined {
    const need = needs.find((place) => this.#out.has(placeKey(place)));
    return need === undefined
      ? undefined
      : this.preview?.entries.find(({ list, place }) => list === need.list && place === need.place);
  }

  leaveOut(entry: EntryPlace, out: boolean): void {
    this.#unchecked = withMembers(this.#unchecked, [placeKey(entry)], out);
  }

  async save(): Promise<void> {
    handOver(await this.#calls.ask('exchange.save', {}), this.#calls.notices);
  }

  async choose(): Promise<void> {
    const file = await chooseFile(this.#calls, 'catalogue-json');
    if (file !== null) await this.look(file);
  }

  /** Shows what a file would do; one that can't be read leaves what was shown. */
  async look(file: ChosenFile): Promise<void> {
    const outcome = await this.#calls.ask('exchange.preview', { text: file.text });
    if (!outcome.ok) return;
    this.#show(file, outcome.value);
  }

  close(): void {
    this.#show(null, null);
  }

  take(): Promise<void> {
    return this.#history.during(async () => {
      if (this.file === null || !this.canTake) return;
      const { file } = this;
      const taking = this.#taking(file.text);
      this.storing = true;
      const outcome = await this.#calls.ask('exchange.take', taking);
      this.storing = false;
      if (!outcome.ok) return;
      if (outcome.value.former === null) await this.#tellNothing(file, outcome.value);
      else await this.#taken(file, taking, outcome.value, outcome.value.former);
    });
  }

  #taking(text: string): Taking {
    const out = (this.preview?.entries ?? []).filter((entry) => this.isOut(entry));
    return {
      text,
      leaveOut: out.flatMap(({ list, place }) => (list === 'settings' ? [] : [{ list, place }])),
      passOverRefused: this.passOverRefused,
      settings: this.#toTake.some(({ list }) => list === 'settings'),
    };
  }

  /** The catalogue has changed since the file was looked at. */
  async #tellNothing(file: ChosenFile, { refused: [first] }: ExchangeTaking): Promise<void> {
    const why =
      first === undefined ? 'all of it is here already' : `${first.label} is refused as things stand`;
    this.#calls.notices.fail(`Nothing was taken in: ${why}.`);
    await this.look(file);
  }

  async #taken(
    { name }: ChosenFile,
    taking: Taking,
    { added, changed }: ExchangeTaking,
    former: NonNullable<ExchangeTaking['former']>,
  ): Promise<void> {
    this.close();
    await this.#reload();
    let before = former;
    const place = listPlace('items');
    const step = this.#history.record({
      words: `Took in ${countOfEntries(added + changed)} of ${name}`,
      ...{ subject: 'exchange', undone: place, redone: place, field: null },
      undo: () => this.#carry(this.#calls.attempt('exchange.takeBack', before)),
      redo: async () => {
        const again = await this.#carry(this.#calls.attempt('exchange.take', taking));
        if (!again.ok) return again;
        if (again.value.former === null) return noLongerFits;
        before = again.value.former;
        return again;
      },
    });
    this.#calls.notices.tell(`${step.words}.`, () => void this.#history.undo(step), {
      subject: step.subject,
    });
  }

  async #carry<T>(call: Promise<Outcome<T>>): Promise<Outcome<T>> {
    const outcome = await call;
    if (outcome.ok) await this.#reload();
    return outcome;
  }

  #show(file: ChosenFile | null, preview: ExchangePreview | null): void {
    this.file = file;
    this.preview = preview;
    this.shown = 'all';
    this.passOverRefused = false;
    const settings = preview?.entries.filter(({ list }) => list === 'settings') ?? [];
    this.#unchecked = withMembers(noMembers, settings.map(placeKey), true);
  }
}

const noLongerFits = failure(
  'in-use',
  'The catalogue has changed so much that the file no longer fits: look at it anew.',
);

/** Whether taking an entry would store something. */
export function isTakeable({ fate }: Pick<ExchangeEntry, 'fate'>): boolean {
  return fate === 'new' || fate === 'changed';
}
