/** What keeps text for as long as the window is open, over a page that is loaded anew: a page's `sessionStorage`. */
export type Shelf = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Drafts by key, as plain data; whoever reads them back judges whether they still fit. */
export type Drafts = Readonly<Record<string, unknown>>;

/** Longer than the longest draft, which is a tour with tracks; more would only crowd out the rest. */
const longestDraft = 1_000_000;

/**
 * Keeps drafts beside the page, those of each catalogue by themselves. A shelf that is forbidden, full or holds something else
 * keeps nothing, and breaks nothing.
 */
export class DraftStore {
  readonly #shelf: () => Shelf;

  /** `shelf` may throw: browsers refuse their storage where a rider forbade it. */
  constructor(shelf: () => Shelf) {
    this.#shelf = shelf;
  }

  read(catalogue: string): Drafts {
    try {
      return asDrafts(fromText(this.#shelf().getItem(nameOf(catalogue)) ?? '{}'));
    } catch {
      return {};
    }
  }

  /** These and no others; one that is too long is left out. */
  keep(catalogue: string, drafts: Drafts): void {
    const kept = Object.entries(drafts).filter(([, draft]) => asText(draft).length <= longestDraft);
    try {
      this.#write(nameOf(catalogue), kept.length === 0 ? null : asText(Object.fromEntries(kept)));
    } catch {
      // Nothing can be kept here: what is on screen is still there, and the browser asks before it goes.
    }
  }

  #write(name: string, text: string | null): void {
    const shelf = this.#shelf();
    // First, so that a shelf that is full does not give back an older draft in place of the one it could not take.
    shelf.removeItem(name);
    if (text !== null) shelf.setItem(name, text);
  }
}

function nameOf(catalogue: string): string {
  return `chargewright not stored: ${catalogue}`;
}

function asDrafts(value: unknown): Drafts {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Drafts) : {};
}

/** Stands for a number that JSON has no word for: a field with no number in it holds NaN. */
const noNumber = 'no number';

function asText(value: unknown): string {
  return JSON.stringify(value, (_, each: unknown) =>
    typeof each === 'number' && !Number.isFinite(each) ? { [noNumber]: String(each) } : each,
  );
}

function fromText(text: string): unknown {
  return JSON.parse(text, (_, each: unknown) =>
    typeof each === 'object' && each !== null && noNumber in each ? Number(each[noNumber]) : each,
  );
}
