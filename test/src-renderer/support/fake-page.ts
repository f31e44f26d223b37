import type { AppPage } from '../../../src-renderer/state/app-state.svelte.ts';
import type { Shelf } from '../../../src-renderer/state/draft-store.ts';

/** A `sessionStorage` in memory; it outlasts a page, as the real one does. */
export class FakeShelf implements Shelf {
  readonly held = new Map<string, string>();

  getItem(name: string): string | null {
    return this.held.get(name) ?? null;
  }

  setItem(name: string, text: string): void {
    this.held.set(name, text);
  }

  removeItem(name: string): void {
    this.held.delete(name);
  }
}

/** The page around the app, as far as the app asks anything of it. */
export class FakePage implements AppPage {
  readonly themes: string[] = [];
  readonly copies: string[] = [];
  reloads = 0;
  readonly #shelf: Shelf;

  constructor(shelf: Shelf = new FakeShelf()) {
    this.#shelf = shelf;
  }

  themeChosen(theme: string): void {
    this.themes.push(theme);
  }

  reload(): void {
    this.reloads += 1;
  }

  shelf(): Shelf {
    return this.#shelf;
  }

  copy(text: string): Promise<boolean> {
    this.copies.push(text);
    return Promise.resolve(true);
  }
}
