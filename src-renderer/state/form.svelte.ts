import type { FieldError, Outcome } from '../../shared-types/outcome.ts';
import { alike, carriedOver, valueAt } from './carry-over.ts';
import { Turns } from './turns.ts';

export type FormStatus = 'untouched' | 'storing' | 'stored' | 'refused';

export interface FormOptions<Draft> {
  /** The name under which the call takes the draft: `item` for `item.massG`. */
  readonly root: string;
  readonly store: (draft: Draft) => Promise<Outcome<unknown>>;
  /** Store each change as it is made; otherwise only when `submit` is called. */
  readonly live: boolean;
}

/** What of a form is not stored: all that it takes to go on with it in another page. */
export interface Unstored<Draft> {
  readonly draft: Draft;
  /** What was stored, or begun with, when the draft was changed. */
  readonly stored: Draft;
  readonly errors: readonly FieldError[];
}

/** What a field needs of the form it stands in. */
export interface FormAccess {
  readonly status: FormStatus;
  readonly errors: readonly FieldError[];
  at(path: string): unknown;
  /** Takes a finished change, and stores it where the form is live. */
  set(path: string, value: unknown): void;
  /** Takes a change that the rider has yet to complete; it is not stored by itself. */
  place(path: string, value: unknown): void;
  /** What is allowed at this path, when its value was refused. */
  errorAt(path: string): string | null;
  /** Whether the value at this path is the one last stored, or the one begun with. */
  isStored(path: string): boolean;
}

/** A draft under edit. Values that are refused stay in the draft, with what is allowed kept beside their path. */
export class Form<Draft> implements FormAccess {
  draft: Draft = $state.raw() as Draft;
  errors = $state.raw<readonly FieldError[]>([]);
  status = $state.raw<FormStatus>('untouched');
  #stored: Draft = $state.raw() as Draft;
  #lastSubmit: Promise<boolean> | null = null;
  readonly #options: FormOptions<Draft>;
  readonly #turns = new Turns();

  constructor(draft: Draft, options: FormOptions<Draft>) {
    this.draft = draft;
    this.#stored = draft;
    this.#options = options;
  }

  at(path: string): unknown {
    return valueAt(this.draft, path.split('.'));
  }

  set(path: string, value: unknown): void {
    this.place(path, value);
    if (this.#options.live) void this.submit();
  }

  place(path: string, value: unknown): void {
    this.draft = withValueAt(this.draft, path.split('.'), value) as Draft;
  }

  errorAt(path: string): string | null {
    const full = `${this.#options.root}.${path}`;
    return this.errors.find((error) => error.path === full)?.allowed ?? null;
  }

  isStored(path: string): boolean {
    return alike(valueAt(this.#stored, path.split('.')), this.at(path));
  }

  /**
   * Something of the draft is refused, on its way or not yet complete. Not a `$derived`: that would stand still once the screen
   * on which the form was begun is left.
   */
  get unsaved(): boolean {
    return this.status === 'storing' || !alike(this.draft, this.#stored);
  }

  /** null where nothing would be lost. */
  get unstored(): Unstored<Draft> | null {
    const { draft, errors } = this;
    const stored = this.#stored;
    return alike(draft, stored) ? null : { draft, stored, errors };
  }

  /** Goes on with what was not stored, beside what was stored since. Nothing is stored until the rider changes or submits it. */
  putBack({ draft, stored, errors }: Unstored<Draft>): void {
    this.draft = carriedOver(draft, stored, this.#stored);
    if (!this.unsaved) return;
    this.errors = errors;
    if (this.#options.live || errors.length > 0) this.status = 'refused';
  }

  /** Takes what is stored by now; what the rider changed and is not stored stays in the draft. */
  adopt(stored: Draft): void {
    if (alike(stored, this.#stored)) return;
    this.draft = carriedOver(this.draft, this.#stored, stored);
    this.#stored = stored;
    if (this.status !== 'refused' || this.unsaved) return;
    this.errors = [];
    this.status = 'untouched';
  }

  submit(): Promise<boolean> {
    this.#lastSubmit = this.#submit();
    return this.#lastSubmit;
  }

  /** The status once nothing is being stored any more. */
  async settled(): Promise<FormStatus> {
    await this.#lastSubmit;
    return this.status;
  }

  async #submit(): Promise<boolean> {
    const turn = this.#turns.take();
    const { draft } = this;
    this.status = 'storing';
    const outcome = await this.#options.store(draft);
    if (turn.isNewest()) {
      this.errors = outcome.ok ? [] : outcome.error.fields;
      this.status = outcome.ok ? 'stored' : 'refused';
      if (outcome.ok) this.#stored = draft;
    }
    return outcome.ok;
  }
}

/** A copy of `root` that differs at one path; what lies beside the path is shared, not copied. */
export function withValueAt(root: unknown, path: readonly string[], value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (Array.isArray(root)) {
    return root.map((each: unknown, i) => (i === Number(key) ? withValueAt(each, rest, value) : each));
  }
  const record = (root ?? {}) as Record<string, unknown>;
  return { ...record, [key]: withValueAt(record[key], rest, value) };
}
