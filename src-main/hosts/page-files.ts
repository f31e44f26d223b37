import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { extname, join, relative, sep } from 'node:path';
import { securityHeaders } from './content-policy.ts';

const mediaTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

/** URL path to file. A path outside this list can't be asked for, however it is spelt. */
export type PageFiles = ReadonlyMap<string, string>;

/** Lists the built page once. Links are left out: they could point anywhere. */
export function listPageFiles(folder: string): PageFiles {
  const files = new Map<string, string>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    const path = join(entry.parentPath, entry.name);
    files.set(`/${relative(folder, path).split(sep).join('/')}`, path);
  }
  const index = files.get('/index.html');
  if (index === undefined) throw new Error('The page has not been built: run "npm run build" first.');
  return files.set('/', index);
}

/** Answers a request for a part of the page; both hosts serve through here. */
export async function answerPage(
  files: PageFiles,
  { method, url }: { readonly method: string; readonly url: string },
): Promise<Response> {
  const path = files.get(new URL(url).pathname);
  if (path === undefined || (method !== 'GET' && method !== 'HEAD')) {
    return new Response('There is nothing at this address.', { status: 404, headers: securityHeaders });
  }
  const headers = {
    ...securityHeaders,
    'Content-Type': mediaTypes[extname(path)] ?? 'application/octet-stream',
    'Cache-Control': 'no-cache',
  };
  return new Response(method === 'HEAD' ? null : await readFile(path), { headers });
}
