import { symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { answerPage, listPageFiles } from '../../../src-main/hosts/page-files.ts';
import { builtPageFolder, temporaryFolder } from './temporary-folder.ts';

function ask(path: string, method = 'GET', folder = builtPageFolder()): Promise<Response> {
  return answerPage(listPageFiles(folder), { method, url: `http://page.test${path}` });
}

describe('the files of the page', () => {
  it('say how to build a page that is missing', () => {
    expect(() => listPageFiles(temporaryFolder())).toThrow('npm run build');
  });

  it.each([
    '/../secret.txt',
    '/assets/../../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/..%5csecret.txt',
    '/assets/%2e%2e%2f%2e%2e%2fsecret.txt',
    '//secret.txt',
    '/index.html%00.js',
    '/assets',
    '/assets/',
  ])('answer %s with nothing but not found', async (path) => {
    const response = await ask(path);
    expect(response.status).toBe(404);
    expect(await response.text()).not.toContain('not for the page');
  });

  it('leave out links, which could lead anywhere', async () => {
    const folder = builtPageFolder();
    symlinkSync(join(folder, '..', 'secret.txt'), join(folder, 'link.txt'));
    expect((await ask('/link.txt', 'GET', folder)).status).toBe(404);
  });

  it('answer no method that could change something', async () => {
    for (const method of ['POST', 'PUT', 'DELETE', 'OPTIONS'])
      expect((await ask('/', method)).status).toBe(404);
  });

  it('are served with their media types', async () => {
    const types = new Map([
      ['/', 'text/html; charset=utf-8'],
      ['/assets/page-1a2b.js', 'text/javascript; charset=utf-8'],
      ['/assets/page-1a2b.css', 'text/css; charset=utf-8'],
      ['/assets/letters.woff2', 'font/woff2'],
    ]);
    for (const [path, type] of types) expect((await ask(path)).headers.get('content-type')).toBe(type);
  });

  it('are served whole, and as headers alone when asked', async () => {
    expect(await (await ask('/assets/page-1a2b.js')).text()).toBe('export {};');
    const head = await ask('/', 'HEAD');
    expect([head.status, await head.text()]).toEqual([200, '']);
  });

  it('carry the content policy, found or not', async () => {
    for (const path of ['/', '/nowhere']) {
      expect((await ask(path)).headers.get('content-security-policy')).toContain("default-src 'none'");
    }
  });
});
