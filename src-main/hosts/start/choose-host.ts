/** The Electron program, or why it can't be had. */
export type Launcher =
  { readonly found: true; readonly path: string } | { readonly found: false; readonly reason: string };

export interface Circumstances {
  /** CHARGEWRIGHT_HOST. */
  readonly wish: string | undefined;
  readonly platform: NodeJS.Platform;
  readonly hasDisplay: boolean;
  readonly isRoot: boolean;
  /** Asked last, for it may fetch the runtime first. */
  readonly findLauncher: () => Launcher;
}

export type HostChoice =
  | { readonly host: 'electron'; readonly path: string }
  | { readonly host: 'loopback'; readonly why: string | null }
  | { readonly host: 'none'; readonly why: string };

function windowOrReason({ platform, hasDisplay, isRoot, findLauncher }: Circumstances): Launcher {
  if (!hasDisplay) return { found: false, reason: 'there is no display for a window' };
  if (platform === 'linux' && isRoot) {
    return { found: false, reason: 'run as root, the window would have to give up its sandbox' };
  }
  return findLauncher();
}

/** Which host to start and why: the window where it can be had, else the browser, unless the rider chose. */
export function chooseHost(circumstances: Circumstances): HostChoice {
  const { wish } = circumstances;
  if (wish === 'loopback') return { host: 'loopback', why: null };
  if (wish !== undefined && wish !== '' && wish !== 'electron') {
    return { host: 'none', why: `CHARGEWRIGHT_HOST is "${wish}": allowed are electron and loopback.` };
  }
  const launcher = windowOrReason(circumstances);
  if (launcher.found) return { host: 'electron', path: launcher.path };
  return wish === 'electron'
    ? { host: 'none', why: `No window: ${launcher.reason}.` }
    : { host: 'loopback', why: `No window: ${launcher.reason}. A browser takes its place.` };
}
