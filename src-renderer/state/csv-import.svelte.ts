import type { CallInput, CsvAddition, CsvReading } from '../../shared-types/contract.ts';
import { countOfItems } from '../parts/text/count-of-items.ts';
import type { Outcome } from '../../shared-types/outcome.ts';
import { Delay } from './delay.ts';
import type { Unstored } from './form.svelte.ts';
import { Turns } from './turns.ts';
import { noMembers, withMembers } from './with-members.ts';

/** What reads and stores the lines: the inventory. */
interface CsvTaker {
  readCsv(text: string): Promise<Outcome<CsvReading>>;
  addCsv(input: CallInput<'items.addCsv'>): Promise<Outcome<CsvAddition>>;
}

/** Read anew once the typing pauses. */
const readsAfterMs = 300;

/** An inventory CSV on its way in: its text as chosen, pasted or mended, and what it reads as. Kept while other screens are open. */
export class CsvImportState {
  opened = $state(false);
  text = $state.raw('');
  reading = $state.raw<CsvReading | null>(null);
  /** Good lines the rider leaves out, by number; forgotten when the text changes, because its lines may shift. */
  leftOut = $state.raw<ReadonlySet<number>>(noMembers);
  passOverErrors = $state(false);
  /** The text as it was read. */
  #readText = $state.raw('');
  readonly #taker: CsvTaker;
  readonly #delay = new Delay(readsAfterMs);
  readonly #turns = new Turns();

  constructor(taker: CsvTaker) {
    this.#taker = taker;
  }

  /** The reading is of an older text. */
  get outdated(): boolean {
    return this.#readText !== this.text;
  }

  /** Lines to be added as things stand: none while a line is in error, unless the rider passes over such. */
  get toAdd(): number {
    if (this.reading === null || this.outdated) return 0;
    const { lines, problems } = this.reading;
    return problems.length > 0 && !this.passOverErrors ? 0 : lines.length - this.leftOut.size;
  }

  /** What the button that adds says: how many lines it would add, or waits to add. */
  get addWords(): string {
    const good = (this.reading?.lines.length ?? 0) - this.leftOut.size;
    return `Add ${countOfItems(good)}`;
  }

  /** null where there is no text that could be lost. */
  get unstored(): Unstored<string> | null {
    return this.text.trim() === '' ? null : { draft: this.text, stored: '', errors: [] };
  }

  /** Goes on with a text of the page before. */
  putBack({ draft }: Unstored<string>): void {
    this.opened = true;
    this.text = draft;
    void this.read();
  }

  write(text: string): void {
    this.text = text;
    this.#delay.run(() => void this.read());
  }

  async read(): Promise<void> {
    const turn = this.#turns.take();
    const { text } = this;
    if (text.trim() === '') {
      this.#show(null, text);
      return;
    }
    const outcome = await this.#taker.readCsv(text);
    if (outcome.ok && turn.isNewest()) this.#show(outcome.value, text);
  }

  leaveOut(lines: readonly number[], out: boolean): void {
    this.leftOut = withMembers(this.leftOut, lines, out);
  }

  /** Stores the lines to be added; the text goes once they are stored. */
  async add(): Promise<void> {
    const { text, passOverErrors } = this;
    const outcome = await this.#taker.addCsv({ text, leaveOut: [...this.leftOut], passOverErrors });
    if (outcome.ok && outcome.value.added.length > 0) this.close();
  }

  close(): void {
    this.#turns.take();
    this.opened = false;
    this.text = '';
    this.#show(null, '');
  }

  #show(reading: CsvReading | null, text: string): void {
    this.reading = reading;
    this.#readText = text;
    this.leftOut = noMembers;
    this.passOverErrors = false;
  }
}
