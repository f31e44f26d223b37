import { describe, expect, it } from 'vitest';
import { AppearanceState } from '../../../src-renderer/state/appearance.svelte.ts';

class FakePage {
  readonly document = { documentElement: { dataset: {} as DOMStringMap } };
  #tell: (event: MediaQueryListEvent) => void = () => undefined;
  readonly #dark: boolean;

  constructor(dark: boolean) {
    this.#dark = dark;
  }

  matchMedia(): Pick<MediaQueryList, 'matches' | 'addEventListener'> {
    return {
      matches: this.#dark,
      addEventListener: (_: string, listener: unknown) => {
        this.#tell = listener as (event: MediaQueryListEvent) => void;
      },
    };
  }

  systemTurns(dark: boolean): void {
    this.#tell({ matches: dark } as MediaQueryListEvent);
  }
}

describe('AppearanceState', () => {
  it('is as the system is until the rider chooses', () => {
    expect(new AppearanceState(new FakePage(true)).dark).toBe(true);
    expect(new AppearanceState(new FakePage(false)).dark).toBe(false);
  });

  it('follows the system when it turns dark', () => {
    const page = new FakePage(false);
    const appearance = new AppearanceState(page);
    page.systemTurns(true);
    expect(appearance.dark).toBe(true);
  });

  it('holds the choice against the system and marks the page', () => {
    const page = new FakePage(true);
    const appearance = new AppearanceState(page);
    appearance.choose('light');
    expect(appearance.dark).toBe(false);
    expect(page.document.documentElement.dataset['theme']).toBe('light');
  });

  it('takes the mark off when the system shall decide again', () => {
    const page = new FakePage(true);
    const appearance = new AppearanceState(page);
    appearance.choose('light');
    appearance.choose('system');
    expect(appearance.dark).toBe(true);
    expect(page.document.documentElement.dataset).toEqual({});
  });
});
