import { beforeEach, describe, expect, it, vi } from 'vitest';
import { setupCalls } from '../../../../src-main/hosts/electron/calls.ts';
import { callChannel } from '../../../../src-main/hosts/electron/channel.ts';
import { builtPage } from '../../../../src-main/hosts/electron/page-address.ts';
import { createWindow } from '../../../../src-main/hosts/electron/window.ts';
import { BrowserWindow, ipcRenderer, resetElectron, sendFrom } from '../../../support/electron-double.ts';
import { callCases, cable } from '../call-cases.ts';
import { smallWorkbench } from '../small-workbench.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

function setup() {
  const window = createWindow('preload.cjs');
  const workbench = smallWorkbench();
  const reported: string[] = [];
  const report = (where: string): void => void reported.push(where);
  setupCalls({ window, page: builtPage, handlers: workbench.handlers, report });
  return { workbench, reported };
}

const forbidden = {
  ok: false,
  error: { code: 'forbidden', message: "Only Chargewright's own page may call it.", fields: [] },
};

describe('calls over the window channel', () => {
  beforeEach(resetElectron);

  it('are refused from a frame that has gone', () => {
    const { workbench } = setup();
    expect(sendFrom(null, callChannel, 'items.save', { item: cable })).toEqual(forbidden);
    expect(workbench.items).toEqual([]);
  });

  it('are refused from any frame but the top one', () => {
    const { workbench } = setup();
    const embedded = { origin: builtPage.origin };
    expect(sendFrom(embedded, callChannel, 'items.save', { item: cable })).toEqual(forbidden);
    expect(workbench.items).toEqual([]);
  });

  it.each(['https://elsewhere.test', 'null', 'chargewright://other'])(
    'are refused while the window shows %s',
    (origin) => {
      const { workbench } = setup();
      const frame = { origin };
      const [window] = BrowserWindow.windows;
      if (window !== undefined) window.webContents.mainFrame = frame;
      expect(sendFrom(frame, callChannel, 'items.save', { item: cable })).toEqual(forbidden);
      expect(workbench.items).toEqual([]);
    },
  );

  it.each([undefined, null, 7, {}, ['items.list']])('answer %j as an unknown call', async (name) => {
    setup();
    expect(await ipcRenderer.invoke(callChannel, name, {})).toMatchObject({
      error: { code: 'unknown-call' },
    });
  });

  it.each(callCases)('answer $title', async ({ name, input, outcome }) => {
    setup();
    expect(await ipcRenderer.invoke(callChannel, name, input)).toEqual(outcome);
  });

  it('report a fault by the name of the call', async () => {
    const { reported } = setup();
    await ipcRenderer.invoke(callChannel, 'stations.list', {});
    expect(reported).toEqual(['stations.list']);
  });
});
