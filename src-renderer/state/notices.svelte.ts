import type { Place } from './edit-history.svelte.ts';

export interface Notice {
  readonly id: number;
  readonly text: string;
  readonly tone: 'news' | 'failure';
  readonly undo: (() => void) | null;
  /** Where what it tells of can be seen. */
  readonly link: Place | null;
  /** What the undo would change, such as `tours/demo-tour`; null where there is none. */
  readonly subject: string | null;
}

/** What news is about. */
export interface About {
  readonly link?: Place;
  readonly subject?: string;
}

const mostShown = 3;
/** Long enough to read a sentence, and where there is an undo to think about it; failures stay until they are closed. */
const newsStaysMs = 10_000;
const undoStaysMs = 30_000;

/** What happened, said once: news with an undo where there is one, and failures. */
export class NoticesState {
  shown = $state.raw<readonly Notice[]>([]);
  #nextId = 1;

  tell(text: string, undo: (() => void) | null = null, { link, subject }: About = {}): void {
    const id = this.#add({ text, tone: 'news', undo, link: link ?? null, subject: subject ?? null });
    setTimeout(() => this.close(id), undo === null ? newsStaysMs : undoStaysMs);
  }

  fail(text: string, link: Place | null = null): void {
    this.#add({ text, tone: 'failure', undo: null, link, subject: null });
  }

  close(id: number): void {
    this.shown = this.shown.filter((notice) => notice.id !== id);
  }

  /** Takes away what offers to take back a change of this. */
  withdraw(subject: string): void {
    this.shown = this.shown.filter((notice) => notice.subject !== subject);
  }

  /** Takes back what the notice told of; a second press finds nothing left to undo. */
  undo(id: number): void {
    const notice = this.shown.find((each) => each.id === id);
    this.close(id);
    notice?.undo?.();
  }

  #add(notice: Omit<Notice, 'id'>): number {
    const id = this.#nextId++;
    const others = this.shown.filter(({ text }) => text !== notice.text);
    this.shown = [...others, { ...notice, id }].slice(-mostShown);
    return id;
  }
}
