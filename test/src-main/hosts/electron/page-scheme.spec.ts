import { beforeEach, describe, expect, it, vi } from 'vitest';
import { setupPage, setupPageScheme } from '../../../../src-main/hosts/electron/page-scheme.ts';
import { protocol, resetElectron } from '../../../support/electron-double.ts';
import { builtPageFolder } from '../temporary-folder.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

async function ask(url: string, method = 'GET'): Promise<Response> {
  setupPage(builtPageFolder());
  const handler = protocol.handlers.get('chargewright');
  if (handler === undefined) throw new Error('The scheme has no handler.');
  return handler({ method, url });
}

describe('the scheme of the page', () => {
  beforeEach(resetElectron);

  it.each([
    'chargewright://app/../secret.txt',
    'chargewright://app/assets/../../secret.txt',
    'chargewright://app/%2e%2e/secret.txt',
    'chargewright://app/..%2fsecret.txt',
    'chargewright://app/..%5csecret.txt',
    'chargewright://app//secret.txt',
    'chargewright://app/assets/',
  ])('serves nothing outside the page for %s', async (url) => {
    const response = await ask(url);
    expect(response.status).toBe(404);
    expect(await response.text()).not.toContain('not for the page');
  });

  it('answers no method that could change something', async () => {
    expect((await ask('chargewright://app/', 'POST')).status).toBe(404);
  });

  it('gets no right to pass over the content policy', () => {
    setupPageScheme();
    expect(protocol.schemes).toEqual([
      { scheme: 'chargewright', privileges: { standard: true, secure: true, supportFetchAPI: true } },
    ]);
  });

  it('serves the page under the content policy', async () => {
    const response = await ask('chargewright://app/');
    expect(await response.text()).toContain('<title>Page</title>');
    expect(response.headers.get('content-security-policy')).toContain("default-src 'none'");
    expect(response.headers.get('x-content-type-options')).toBe('nosniff');
  });

  it('serves a script with a type that modules need', async () => {
    const response = await ask('chargewright://app/assets/page-1a2b.js');
    expect(response.headers.get('content-type')).toBe('text/javascript; charset=utf-8');
  });
});
