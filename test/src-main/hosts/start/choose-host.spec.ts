import { describe, expect, it } from 'vitest';
import {
  chooseHost,
  type Circumstances,
  type Launcher,
} from '../../../../src-main/hosts/start/choose-host.ts';

function askedFor(changes: Partial<Circumstances>, launcher: Launcher = { found: true, path: '/electron' }) {
  let searches = 0;
  const choice = chooseHost({
    wish: undefined,
    platform: 'linux',
    hasDisplay: true,
    isRoot: false,
    findLauncher: () => {
      searches += 1;
      return launcher;
    },
    ...changes,
  });
  return { choice, searches };
}

const missing: Launcher = { found: false, reason: 'the Electron runtime could not be fetched (no network)' };

describe('the choice of a host', () => {
  it('refuses a wish it does not know, with what is allowed', () => {
    expect(askedFor({ wish: 'browser' }).choice).toEqual({
      host: 'none',
      why: 'CHARGEWRIGHT_HOST is "browser": allowed are electron and loopback.',
    });
  });

  it('falls back without a display, and fetches nothing', () => {
    expect(askedFor({ hasDisplay: false })).toEqual({
      choice: {
        host: 'loopback',
        why: 'No window: there is no display for a window. A browser takes its place.',
      },
      searches: 0,
    });
  });

  it('falls back for root on Linux rather than drop the sandbox', () => {
    const { choice, searches } = askedFor({ isRoot: true });
    expect(choice).toMatchObject({ host: 'loopback', why: expect.stringContaining('sandbox') as string });
    expect(searches).toBe(0);
  });

  it('falls back where the runtime can not be had', () => {
    expect(askedFor({}, missing).choice).toEqual({
      host: 'loopback',
      why: 'No window: the Electron runtime could not be fetched (no network). A browser takes its place.',
    });
  });

  it.each([
    ['without a display', { hasDisplay: false }],
    ['for root', { isRoot: true }],
    ['without the runtime', {}],
  ])('starts nothing else when the window was asked for %s', (_title, changes) => {
    expect(askedFor({ ...changes, wish: 'electron' }, missing).choice.host).toBe('none');
  });

  it('takes the browser when asked, without a search', () => {
    expect(askedFor({ wish: 'loopback' })).toEqual({ choice: { host: 'loopback', why: null }, searches: 0 });
  });

  it.each([undefined, '', 'electron'])('opens the window where it can be had (wish %j)', (wish) => {
    expect(askedFor({ wish }).choice).toEqual({ host: 'electron', path: '/electron' });
  });

  it('opens the window for root where no sandbox is lost', () => {
    expect(askedFor({ isRoot: true, platform: 'darwin' }).choice.host).toBe('electron');
  });
});
