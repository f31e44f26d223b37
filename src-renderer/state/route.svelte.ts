export const screens = [
  'start',
  'trade-offs',
  'inventory',
  'field-log',
  'tours',
  'scenarios',
  'kit-search',
  'upgrade-check',
  'stop-planner',
  'sheet',
  'assumptions',
  'about',
] as const;
export type Screen = (typeof screens)[number];

/** A screen and, where it has one, the id of what is open in it (or the kind of what is being added). */
export interface Route {
  readonly screen: Screen;
  readonly id: string | null;
  readonly adding: boolean;
}

const first: Route = { screen: 'trade-offs', id: null, adding: false };

/** `#/inventory/demo-phone`, `#/inventory/add/bank`; anything else opens the trade-offs. */
export function parseRoute(hash: string): Route {
  const [name, ...rest] = hash.replace(/^#\/?/, '').split('/').map(readable);
  const screen = screens.find((each) => each === name);
  if (screen === undefined) return first;
  const adding = rest[0] === 'add';
  return { screen, id: rest[adding ? 1 : 0] ?? null, adding };
}

function readable(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

export function addressOf(screen: Screen, id?: string): string {
  return id === undefined ? `#/${screen}` : `#/${screen}/${encodeURIComponent(id)}`;
}

export function addressToAdd(screen: Screen, kind: string): string {
  return `#/${screen}/add/${encodeURIComponent(kind)}`;
}

/** The part of a window that holds the address. */
interface Page {
  readonly location: { hash: string };
  addEventListener(type: 'hashchange', listener: () => void): void;
}

export class RouteState {
  current = $state.raw<Route>(first);
  readonly #page: Page;

  constructor(page: Page) {
    this.#page = page;
    this.#read();
    page.addEventListener('hashchange', () => this.#read());
  }

  open(screen: Screen, id?: string): void {
    this.#page.location.hash = addressOf(screen, id);
  }

  add(screen: Screen, kind: string): void {
    this.#page.location.hash = addressToAdd(screen, kind);
  }

  #read(): void {
    this.current = parseRoute(this.#page.location.hash);
  }
}
