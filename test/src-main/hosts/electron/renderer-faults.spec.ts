import { beforeEach, describe, expect, it, vi } from 'vitest';
import { builtPage } from '../../../../src-main/hosts/electron/page-address.ts';
import { surviveCrashes } from '../../../../src-main/hosts/electron/renderer-faults.ts';
import { createWindow } from '../../../../src-main/hosts/electron/window.ts';
import { app, BrowserWindow, dialog, resetElectron } from '../../../support/electron-double.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

const minuteMs = 60_000;

/** A window at a screen, whose page ends when told to at a time of the test's own. */
function survivingWindow(url = 'chargewright://app/#inventory') {
  const reports: string[] = [];
  let nowMs = 0;
  surviveCrashes(
    createWindow('preload.cjs'),
    builtPage,
    (where, fault) => reports.push(`${where}: ${String(fault)}`),
    () => nowMs,
  );
  const window = BrowserWindow.windows[0]!;
  const contents = window.webContents;
  contents.url = url;
  const end = async (reason = 'crashed', atMs = nowMs): Promise<void> => {
    nowMs = atMs;
    contents.emit('render-process-gone', {}, { reason, exitCode: 5 });
    await Promise.resolve();
  };
  return { window, contents, reports, end };
}

/** Whatever waits for a button that was pressed goes on. */
const pressed = (): Promise<void> => new Promise((done) => setImmediate(done));

describe('a page whose process ends', () => {
  beforeEach(resetElectron);

  it.each(['crashed', 'oom', 'killed', 'launch-failed'])(
    'is loaded again at its screen, and reported, when it is gone as %s',
    async (reason) => {
      const { contents, window, reports, end } = survivingWindow();
      await end(reason);
      expect(contents.done).toEqual(['reload']);
      expect(window.done).toEqual([]);
      expect(reports).toEqual([`page: its process ended: ${reason} (5)`]);
    },
  );

  it('is loaded from the start when it ended before it came', async () => {
    const { contents, window, end } = survivingWindow('');
    await end();
    expect(contents.done).toEqual([]);
    expect(window.done).toEqual(['load chargewright://app/']);
  });

  it('reports why it can not be loaded again', async () => {
    const { window, reports, end } = survivingWindow('');
    vi.spyOn(window, 'loadURL').mockRejectedValue('ERR_FAILED');
    await end();
    await pressed();
    expect(reports.at(-1)).toBe('page: ERR_FAILED');
  });

  it('stays away when it ended of itself, or with its window', async () => {
    const { contents, window, reports, end } = survivingWindow();
    await end('clean-exit');
    window.destroyed = true;
    await end();
    expect(contents.done).toEqual([]);
    expect(reports).toEqual([]);
  });

  it('is not loaded a third time within a minute, but the rider asked, who may close the window', async () => {
    const { contents, window, end } = survivingWindow();
    dialog.answer = 'Close Chargewright';
    await end('crashed', 0);
    await end('crashed', 20_000);
    expect(dialog.questions).toEqual([]);
    await end('crashed', minuteMs - 1);
    await pressed();
    expect(dialog.questions[0]?.message).toBe('The page has ended three times within a minute.');
    expect(contents.done).toEqual(['reload', 'reload']);
    expect(window.done).toEqual(['destroy']);
  });

  it('is tried anew when the rider says so, and the count begins again', async () => {
    const { contents, end } = survivingWindow();
    dialog.answer = 'Load again';
    for (const atMs of [0, 1, 2]) await end('crashed', atMs);
    await pressed();
    await end('crashed', 3);
    expect(contents.done).toHaveLength(4);
    expect(dialog.questions).toHaveLength(1);
  });

  it('is loaded without a question however often it ends, with a minute between', async () => {
    const { contents, end } = survivingWindow();
    for (const minute of [0, 1, 2, 3, 4]) await end('crashed', minute * minuteMs);
    expect(contents.done).toHaveLength(5);
    expect(dialog.questions).toEqual([]);
  });
});

describe('a page that does not answer', () => {
  beforeEach(resetElectron);

  it('is left to its work when the rider waits, or closes the question by a key', async () => {
    const { window, contents, reports } = survivingWindow();
    window.emit('unresponsive');
    await pressed();
    expect(dialog.questions.map(({ buttons }) => buttons)).toEqual([['Wait', 'Load again']]);
    expect(contents.done).toEqual([]);
    expect(reports).toEqual(['page: it does not answer']);
  });

  it('is ended, and so loaded again, when the rider says so', async () => {
    const { window, contents, end } = survivingWindow();
    dialog.answer = 'Load again';
    window.emit('unresponsive');
    await pressed();
    expect(contents.done).toEqual(['crash']);
    await end('killed');
    expect(contents.done).toEqual(['crash', 'reload']);
  });

  it.each(['responsive', 'gone'])('takes its question away once it is %s', async (how) => {
    const { window, end } = survivingWindow();
    window.emit('unresponsive');
    const signal = dialog.questions[0]?.signal;
    expect(signal?.aborted).toBe(false);
    if (how === 'gone') await end();
    else window.emit('responsive');
    expect(signal?.aborted).toBe(true);
  });
});

describe('another process of the window', () => {
  beforeEach(resetElectron);

  it('is reported by its name, or else its kind, unless it ended of itself', () => {
    const { reports } = survivingWindow();
    const gone = { type: 'Utility', name: 'Network Service', reason: 'crashed', exitCode: 11 };
    app.emit('child-process-gone', {}, gone);
    app.emit('child-process-gone', {}, { type: 'GPU', reason: 'killed', exitCode: 9 });
    app.emit('child-process-gone', {}, { ...gone, reason: 'clean-exit' });
    expect(reports).toEqual([
      'Network Service: its process ended: crashed (11)',
      'GPU: its process ended: killed (9)',
    ]);
  });
});
