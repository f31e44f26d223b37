import { describe, expect, it } from 'vitest';
import {
  addressOf,
  addressToAdd,
  parseRoute,
  RouteState,
  screens,
} from '../../../src-renderer/state/route.svelte.ts';

class FakePage {
  readonly location = { hash: '' };
  #listener: () => void = () => undefined;

  addEventListener(_: 'hashchange', listener: () => void): void {
    this.#listener = listener;
  }

  /** The rider follows a link. */
  go(hash: string): void {
    this.location.hash = hash;
    this.#listener();
  }
}

describe('parseRoute()', () => {
  it.each(['', '#', '#/', '#/nowhere', '#/%E0%A4%A', 'garbage'])('opens the trade-offs for %j', (hash) => {
    expect(parseRoute(hash)).toEqual({ screen: 'trade-offs', id: null, adding: false });
  });

  it.each(screens)('finds the screen %s by its own address', (screen) => {
    expect(parseRoute(addressOf(screen)).screen).toBe(screen);
  });

  it('reads back the id an address was made with', () => {
    const id = 'a b/c%';
    expect(parseRoute(addressOf('inventory', id))).toEqual({ screen: 'inventory', id, adding: false });
  });

  it('reads the kind of what is being added', () => {
    expect(parseRoute(addressToAdd('inventory', 'wall-charger'))).toEqual({
      screen: 'inventory',
      id: 'wall-charger',
      adding: true,
    });
  });
});

describe('RouteState', () => {
  it('starts where the address says', () => {
    const page = new FakePage();
    page.location.hash = '#/tours/demo-tour';
    expect(new RouteState(page).current).toEqual({ screen: 'tours', id: 'demo-tour', adding: false });
  });

  it('follows the address when the rider goes elsewhere', () => {
    const page = new FakePage();
    const route = new RouteState(page);
    page.go('#/about');
    expect(route.current.screen).toBe('about');
  });

  it('opens a screen and an adding by writing the address', () => {
    const page = new FakePage();
    const route = new RouteState(page);
    route.open('tours', 'demo-tour');
    expect(page.location.hash).toBe('#/tours/demo-tour');
    route.add('inventory', 'bank');
    expect(page.location.hash).toBe('#/inventory/add/bank');
  });
});
