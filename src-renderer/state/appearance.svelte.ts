import { createContext } from 'svelte';
import type { Settings } from '../../shared-types/settings.ts';

/** The part of a window that knows and shows light and dark. */
interface Page {
  readonly document: { readonly documentElement: { readonly dataset: DOMStringMap } };
  matchMedia(query: string): Pick<MediaQueryList, 'matches' | 'addEventListener'>;
}

/** Light or dark, as the system has it or as the rider chose. Marks drawn on a canvas follow `dark`. */
export class AppearanceState {
  #theme = $state.raw<Settings['theme']>('system');
  #systemDark = $state(false);
  readonly dark = $derived(this.#theme === 'system' ? this.#systemDark : this.#theme === 'dark');
  readonly #page: Page;

  constructor(page: Page) {
    this.#page = page;
    const system = page.matchMedia('(prefers-color-scheme: dark)');
    this.#systemDark = system.matches;
    system.addEventListener('change', ({ matches }) => (this.#systemDark = matches));
  }

  choose(theme: Settings['theme']): void {
    const { dataset } = this.#page.document.documentElement;
    if (theme === 'system') delete dataset['theme'];
    else dataset['theme'] = theme;
    this.#theme = theme;
  }
}

export const [useAppearance, provideAppearance] = createContext<AppearanceState>();
