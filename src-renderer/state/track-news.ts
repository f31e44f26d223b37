import type { NoticesState } from './notices.svelte.ts';

/** The one notice about taking in a track: what was said of the file before goes when the next one comes. */
export class TrackNews {
  #text: string | null = null;
  readonly #notices: NoticesState;

  constructor(notices: NoticesState) {
    this.#notices = notices;
  }

  tell(text: string): void {
    this.clear();
    this.#text = text;
    this.#notices.tell(text);
  }

  fail(text: string): void {
    this.clear();
    this.#text = text;
    this.#notices.fail(text);
  }

  clear(): void {
    const old = this.#notices.shown.find(({ text }) => text === this.#text);
    if (old !== undefined) this.#notices.close(old.id);
    this.#text = null;
  }
}
