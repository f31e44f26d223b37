import { app, dialog, type BrowserWindow, type MessageBoxOptions } from 'electron';
import type { Report } from '../fault-log.ts';
import { isPage, type PageAddress } from './page-address.ts';

/** A page that ends this often within this time would end again: it is loaded no more until the rider says so. */
const mostEnds = 3;
const withinMs = 60_000;

const choices = { wait: 'Wait', reload: 'Load again', close: 'Close Chargewright' };

const endingAgain: MessageBoxOptions = {
  type: 'error',
  message: 'The page has ended three times within a minute.',
  detail:
    'What is marked as stored is safe. What went wrong stands in the file faults.log beside the catalogue.',
  buttons: [choices.close, choices.reload],
  defaultId: 1,
  cancelId: 1,
};

const notAnswering: MessageBoxOptions = {
  type: 'warning',
  message: 'The page does not answer.',
  detail: 'It may still be at work. Loaded again, it shows what was stored and loses what was not.',
  buttons: [choices.wait, choices.reload],
  defaultId: 0,
  cancelId: 0,
};

/** Tells whether ends of the page follow each other too closely. */
class Ends {
  #timesMs: readonly number[] = [];
  tooMany(nowMs: number): boolean {
    this.#timesMs = [...this.#timesMs.filter((timeMs) => nowMs - timeMs < withinMs), nowMs];
    return this.#timesMs.length >= mostEnds;
  }
  forget(): void {
    this.#timesMs = [];
  }
}

/** The words of the button that was pressed; `signal` takes the question away. */
async function ask(
  window: BrowserWindow,
  question: MessageBoxOptions,
  signal?: AbortSignal,
): Promise<string> {
  const { response } = await dialog.showMessageBox(window, signal ? { ...question, signal } : question);
  return question.buttons?.[response] ?? '';
}

/**
 * Keeps the window alive when the process that draws its page ends: the page comes back at the screen it showed, with what
 * was stored. Where it ends again and again, or answers no more, the rider is asked. Each fault is reported.
 */
export function surviveCrashes(
  window: BrowserWindow,
  page: PageAddress,
  report: Report,
  nowMs: () => number = () => performance.now(),
): void {
  const contents = window.webContents;
  const ends = new Ends();

  async function showAgain(): Promise<void> {
    if (ends.tooMany(nowMs())) {
      if ((await ask(window, endingAgain)) === choices.close) {
        window.destroy();
        return;
      }
      ends.forget();
    }
    // The screen stands behind the hash, which loading again keeps. A page that ended before it came has no address yet.
    if (isPage(contents.getURL(), page)) contents.reload();
    else await window.loadURL(page.url);
  }

  contents.on('render-process-gone', (_event, { reason, exitCode }) => {
    if (reason === 'clean-exit' || window.isDestroyed()) return;
    report('page', `its process ended: ${reason} (${exitCode})`);
    showAgain().catch((fault: unknown) => report('page', fault));
  });

  window.on('unresponsive', () => {
    report('page', 'it does not answer');
    const settled = new AbortController();
    window.once('responsive', () => settled.abort());
    contents.once('render-process-gone', () => settled.abort());
    ask(window, notAnswering, settled.signal)
      .then((choice) => {
        // Its end is handled above, like any other.
        if (choice === choices.reload) contents.forcefullyCrashRenderer();
      })
      .catch((fault: unknown) => report('page', fault));
  });

  app.on('child-process-gone', (_event, { type, name, reason, exitCode }) => {
    if (reason !== 'clean-exit') report(name ?? type, `its process ended: ${reason} (${exitCode})`);
  });
}
