/** Lists whose entries come and go, and the entries. */
const lists = 'tbody, ol, ul';

/** Where the focus stood, told by what was around it. */
interface Stand {
  readonly around: readonly Element[];
  readonly list: Element | null;
  /** The place of the entry in its list, and of the control within the entry. */
  readonly entry: number;
  readonly control: number;
}

const focusable = 'a[href], button:not(:disabled), input:not(:disabled), select, textarea, summary';

/**
 * Where the focused control goes with a row or a part that is removed, the focus goes to the same control of the row that
 * took its place, or to the heading of what is left around it; never to the top of the page.
 */
export function keepFocus(root: HTMLElement): () => void {
  const page = root.ownerDocument;
  let stand: Stand | null = null;

  const remember = (event: FocusEvent): void => {
    // A dialog gives the focus back by itself.
    const { target } = event;
    stand = target instanceof Element && target.closest('dialog') === null ? standOf(target, root) : null;
  };
  const forget = (): void => {
    stand = null;
  };
  const restore = (): void => {
    if (stand === null || page.activeElement !== page.body || stand.around[0]?.isConnected === true) return;
    const next = nextTo(stand);
    stand = null;
    next?.focus({ preventScroll: true });
  };
  // One frame later, so that a part which places the focus itself comes first.
  const watcher = new MutationObserver(() => requestAnimationFrame(restore));

  root.addEventListener('focusin', remember);
  root.addEventListener('pointerdown', forget);
  watcher.observe(root, { childList: true, subtree: true });
  return () => {
    root.removeEventListener('focusin', remember);
    root.removeEventListener('pointerdown', forget);
    watcher.disconnect();
  };
}

function standOf(control: Element, root: Element): Stand {
  const around: Element[] = [];
  for (let each: Element | null = control; each !== null && each !== root; each = each.parentElement)
    around.push(each);
  const list = control.closest(lists);
  const entry = list === null ? undefined : around.find((each) => each.parentElement === list);
  return {
    around: [...around, root],
    list,
    entry: entry === undefined ? -1 : [...(list?.children ?? [])].indexOf(entry),
    control: entry === undefined ? -1 : [...entry.querySelectorAll(focusable)].indexOf(control),
  };
}

function nextTo({ around, list, entry, control }: Stand): HTMLElement | null {
  const row = list?.isConnected === true ? (list.children[entry] ?? list.lastElementChild) : null;
  const controls = row === null ? [] : [...row.querySelectorAll<HTMLElement>(focusable)];
  return controls[Math.min(control, controls.length - 1)] ?? headingIn(around);
}

/** The heading of the nearest part that is still there and has one. */
function headingIn(around: readonly Element[]): HTMLElement | null {
  for (const part of around) {
    const heading = part.isConnected ? part.querySelector<HTMLElement>('h1, h2, h3') : null;
    if (heading === null) continue;
    heading.tabIndex = -1;
    return heading;
  }
  return null;
}
