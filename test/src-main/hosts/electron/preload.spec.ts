import { beforeEach, describe, expect, it, vi } from 'vitest';
import { setupCalls } from '../../../../src-main/hosts/electron/calls.ts';
import { builtPage } from '../../../../src-main/hosts/electron/page-address.ts';
import { createWindow } from '../../../../src-main/hosts/electron/window.ts';
import { contextBridge, ipcRenderer, resetElectron } from '../../../support/electron-double.ts';
import { callCases } from '../call-cases.ts';
import { smallWorkbench } from '../small-workbench.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

async function loadBridge() {
  vi.resetModules();
  await import('../../../../src-main/hosts/electron/preload.ts');
  const bridge = contextBridge.world.get('chargewright');
  if (bridge === undefined) throw new Error('The preload offered no bridge.');
  return bridge;
}

describe('the bridge of the window', () => {
  beforeEach(resetElectron);

  it.each(['items.explode', 'constructor', '', 7, null])('sends nothing for the name %j', async (name) => {
    const bridge = await loadBridge();
    expect(await bridge.call(name, {})).toMatchObject({ ok: false, error: { code: 'unknown-call' } });
    expect(ipcRenderer.sent).toEqual([]);
  });

  it('offers the host and one function, nothing of Electron', async () => {
    const bridge = await loadBridge();
    expect([...contextBridge.world.keys()]).toEqual(['chargewright']);
    expect(Object.keys(bridge).toSorted()).toEqual(['call', 'host']);
    expect(bridge.host).toBe('electron');
  });

  it.each(callCases)('answers $title as the loopback host does', async ({ name, input, outcome }) => {
    const { handlers } = smallWorkbench();
    const window = createWindow('preload.cjs');
    setupCalls({ window, page: builtPage, handlers, report: () => undefined });
    const bridge = await loadBridge();
    expect(await bridge.call(name, input)).toEqual(outcome);
  });
});
