import { existsSync, readFileSync } from 'node:fs';
import { registerHooks } from 'node:module';
import { join, resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';
import { createContext, runInContext } from 'node:vm';
import * as electron from './electron-double.ts';

/*
 * Run as a process of its own: `node play-built-electron.ts BEHAVIOUR TARGET`. It starts the built main entry with the double
 * in place of `electron`, plays the system and the page, and sends what it found to its parent.
 */

const { app, BrowserWindow, contextBridge, dialog, protocol, sendFrom } = electron;

const out = resolve(import.meta.dirname, '../../out');
const opensWithinMs = 20_000;

/** What came of asking for a part of the page. */
export interface ServedPart {
  readonly path: string;
  readonly status: number;
  readonly type: string | null;
  readonly length: number;
}

/** What was found while the built program ran, from its start to its end. */
export interface Findings {
  readonly userData: string | undefined;
  readonly schemes: readonly string[];
  readonly loaded: readonly string[];
  readonly preload: string;
  readonly bridges: readonly string[];
  readonly served: readonly ServedPart[];
  readonly policy: string | null;
  readonly about: unknown;
  readonly unknown: unknown;
  readonly fromElsewhere: unknown;
  readonly sheet: unknown;
  readonly cameForward: boolean;
  readonly openBeforeQuit: boolean;
  readonly openAfterQuit: boolean;
  readonly errors: readonly string[];
}

/** What a second instance did before it ended. */
export interface SecondFindings {
  readonly done: readonly string[];
  readonly windows: number;
}

/** Has every later import of `electron` meet the double. */
function replaceElectron(): void {
  const url = pathToFileURL(join(import.meta.dirname, 'electron-double.ts')).href;
  registerHooks({
    resolve: (name, context, next) =>
      name === 'electron' ? { url, shortCircuit: true } : next(name, context),
  });
}

async function startMain(): Promise<void> {
  await import(pathToFileURL(join(out, 'main/electron.js')).href);
}

async function openedWindow(): Promise<electron.BrowserWindow> {
  for (let waitedMs = 0; waitedMs < opensWithinMs; waitedMs += 20) {
    const [window] = BrowserWindow.windows;
    if (window?.done.some((each) => each.startsWith('load'))) return window;
    if (app.done.length > 0) throw new Error(`It ended: ${[...app.done, ...dialog.errors].join('; ')}`);
    await sleep(20);
  }
  throw new Error('No window loaded its page.');
}

/** Runs the preload as a sandboxed window does: as a script, without Node, that may require nothing but `electron`. */
function runPreload(file: string): void {
  const world = createContext({
    module: { exports: {} },
    exports: {},
    require: (name: string) => {
      if (name !== 'electron') throw new Error(`A sandboxed preload may not require ${name}.`);
      return electron;
    },
  });
  runInContext(readFileSync(file, 'utf8'), world, { filename: file });
}

async function ask(
  path: string,
): Promise<ServedPart & { readonly text: string; readonly policy: string | null }> {
  const handler = protocol.handlers.get('chargewright');
  if (handler === undefined) throw new Error('Nothing serves the page.');
  const answer = await handler({ method: 'GET', url: new URL(path, 'chargewright://app/').href });
  const text = await answer.text();
  return {
    path,
    status: answer.status,
    type: answer.headers.get('Content-Type'),
    policy: answer.headers.get('Content-Security-Policy'),
    length: text.length,
    text,
  };
}

/** The page and all that it and its style sheets name. */
async function servedParts(): Promise<{ readonly served: ServedPart[]; readonly policy: string | null }> {
  const index = await ask('./');
  const named = [...index.text.matchAll(/(?:src|href)="([^"]+)"/gu)].map((match) => match[1]!);
  const parts = await Promise.all(named.map(ask));
  const styles = parts.filter(({ path }) => path.endsWith('.css'));
  const fonts = styles.flatMap(({ text, path }) =>
    [...text.matchAll(/url\(['"]?([^'")]+)['"]?\)/gu)].map(
      (match) => new URL(match[1]!, `chargewright://app/${path}`).pathname,
    ),
  );
  const served = [index, ...parts, ...(await Promise.all(fonts.map(ask))), await ask('../main/electron.js')];
  return {
    served: served.map(({ path, status, type, length }) => ({ path, status, type, length })),
    policy: index.policy,
  };
}

/** Plays the whole life of the program; the sheet is saved to `target`. */
async function playLife(target: string): Promise<Findings> {
  await startMain();
  const window = await openedWindow();
  const preload = String(window.options.webPreferences['preload']);
  runPreload(preload);
  const bridge = contextBridge.world.get('chargewright');
  if (bridge === undefined) throw new Error('The preload offered no bridge.');
  const parts = await servedParts();
  dialog.savePath = target;
  const log = `${join(app.paths.get('userData') ?? '', '../catalogue.sqlite3')}-wal`;
  const findings = {
    userData: app.paths.get('userData'),
    schemes: protocol.schemes.map(({ scheme }) => scheme),
    loaded: [...window.done],
    preload,
    bridges: [...contextBridge.world.keys()],
    ...parts,
    about: await bridge.call('about', {}),
    unknown: await bridge.call('items.explode', {}),
    fromElsewhere: await sendFrom({ origin: 'https://elsewhere.test' }, 'chargewright:call', 'about', {}),
    sheet: await bridge.call('sheet.save', {
      runId: 'a-run',
      tourId: 'demo-tour',
      scenarioIds: null,
      withSwings: false,
      form: { as: 'pdf', paper: 'a4' },
    }),
  };
  app.emit('second-instance');
  const openBeforeQuit = existsSync(log);
  app.emit('window-all-closed');
  app.emit('will-quit');
  return {
    ...findings,
    cameForward: window.done.includes('focus'),
    openBeforeQuit,
    openAfterQuit: existsSync(log),
    errors: dialog.errors,
  };
}

async function playSecond(): Promise<SecondFindings> {
  app.holdsLock = false;
  await startMain();
  await sleep(50);
  return { done: app.done, windows: BrowserWindow.windows.length };
}

const [, , behaviour, target = ''] = process.argv;
replaceElectron();
process.send?.(behaviour === 'second' ? await playSecond() : await playLife(target));
