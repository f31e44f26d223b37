import { FuseV1Options, getCurrentFuseWire } from '@electron/fuses';
import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { beforeAll, describe, expect, it, onTestFinished } from 'vitest';
import { bundledListName } from '../../../../src-main/hosts/packaging/bundled-packages.ts';
import { packageProgram, type PackagedProgram } from '../../../support/packaged-program.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const project = resolve(import.meta.dirname, '../../../..');

/** Packaging takes seconds, on a busy computer many. */
const patienceMs = 120_000;

/** All files under a folder, as paths from there, in order. */
function filesUnder(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)))
    .toSorted();
}

/** Starts the host for browsers from the given folder, which may read nothing outside it, and answers how its page asks. */
async function startIn(folder: string) {
  const data = temporaryFolder();
  const host = spawn(
    process.execPath,
    [
      ...['--permission', '--allow-worker', '--allow-addons', '--disable-warning=SecurityWarning'],
      ...[`--allow-fs-read=${folder}`, `--allow-fs-read=${data}`, `--allow-fs-write=${data}`],
      join(folder, 'out/main/loopback.js'),
    ],
    { env: { ...process.env, CHARGEWRIGHT_DATA: data, CHARGEWRIGHT_PORT: '0' } },
  );
  const ended = new Promise((done) => host.once('exit', done));
  onTestFinished(async () => {
    host.kill('SIGINT');
    await ended;
  });
  const said = await new Promise<string>((tell) => {
    host.stdout.once('data', (data: Buffer) => tell(data.toString()));
    host.stderr.once('data', (data: Buffer) => tell(data.toString()));
  });
  const address = /http:\S+/u.exec(said)?.[0];
  if (address === undefined) throw new Error(`The packaged files do not start: ${said}`);
  const { origin } = new URL(address);
  const opening = await fetch(address, { redirect: 'manual' });
  const [cookie = ''] = opening.headers.getSetCookie()[0]?.split(';') ?? [];
  const page = new URL(opening.headers.get('location') ?? '', origin).href;
  return {
    page: async () => (await fetch(page, { headers: { cookie } })).text(),
    call: async (name: string, input: object) => {
      const headers = { origin, cookie, 'content-type': 'application/json' };
      const answer = await fetch(`${page}call/${name}`, {
        method: 'POST',
        headers,
        body: JSON.stringify(input),
      });
      return (await answer.json()) as { readonly ok: boolean; readonly value: Record<string, unknown> };
    },
  };
}

describe.skipIf(process.platform !== 'linux')('the packaged program', { timeout: patienceMs }, () => {
  let packaged: PackagedProgram;

  beforeAll(async () => {
    packaged = await packageProgram();
    return () => packaged.remove();
  }, patienceMs);

  it('holds no source, test, map or document, and nothing that only developing needs', () => {
    const files = filesUnder(packaged.extracted);
    expect(files.filter((file) => /\.(?:ts|mts|cts|map|svelte|sql|md|spec\.\w+)$/u.test(file))).toEqual([]);
    expect([...new Set(files.map((file) => file.split('/')[0]))]).toEqual([
      'LICENSE',
      'node_modules',
      'out',
      'package.json',
    ]);
    expect(files.filter((file) => /node_modules\/(?:electron|svelte|typescript|open)\//u.test(file))).toEqual(
      [],
    );
  });

  it('holds the whole built app but the starts from a checkout', () => {
    const own = (file: string): boolean => /^out\/(?:main|preload|renderer)\//u.test(file);
    const built = filesUnder(project.concat('/out')).map((file) => `out/${file}`);
    const left = (file: string): boolean =>
      ['out/main/start.js', 'out/main/demo.js'].includes(file) || file.endsWith(bundledListName);
    expect(filesUnder(packaged.extracted).filter((file) => file.startsWith('out/'))).toEqual(
      built.filter((file) => own(file) && !left(file)),
    );
  });

  it('lays the database engine of its own system beside the archive, and nothing else', () => {
    expect(filesUnder(join(packaged.folder, 'resources/app.asar.unpacked'))).toEqual([
      `node_modules/better-sqlite3/prebuilds/linux-${process.arch}.node`,
    ]);
    expect(filesUnder(packaged.extracted).filter((file) => file.endsWith('.node'))).toHaveLength(1);
  });

  it('is no Node.js, takes nothing from outside its archive, and keeps the fuses it does not know', async () => {
    const wire = await getCurrentFuseWire(packaged.program);
    const on = Object.entries(wire).filter(([, state]) => Number(state) === '1'.charCodeAt(0));
    const beyond = Object.keys(FuseV1Options).length / 2;
    expect(on.map(([fuse]) => FuseV1Options[Number(fuse)] ?? Number(fuse))).toEqual([
      'EnableCookieEncryption',
      'EnableEmbeddedAsarIntegrityValidation',
      'OnlyLoadAppFromAsar',
      beyond,
    ]);
  });

  it('starts no further process: without RunAsNode there is no Node.js to start', () => {
    for (const file of filesUnder(join(packaged.extracted, 'out/main'))) {
      const code = readFileSync(join(packaged.extracted, 'out/main', file), 'utf8');
      expect([file, /child_process|process\.execPath/u.test(code)]).toEqual([file, false]);
    }
  });

  it('names itself, its version and whom to ask, and ships the licences of others', () => {
    const own = JSON.parse(readFileSync(join(project, 'package.json'), 'utf8')) as Record<string, unknown>;
    const shipped = JSON.parse(readFileSync(join(packaged.extracted, 'package.json'), 'utf8')) as object;
    expect(shipped).toMatchObject({
      name: 'chargewright',
      productName: 'Chargewright',
      version: own['version'],
      main: 'out/main/electron.js',
      type: 'module',
      license: 'MIT',
      author: { email: expect.stringMatching(/\.invalid$/u) as string },
    });
    expect(Object.keys(shipped)).not.toContain('devDependencies');
    expect(Object.keys(shipped)).not.toContain('scripts');
    const licences = readFileSync(join(packaged.folder, 'resources/third-party-licences.txt'), 'utf8');
    for (const name of ['svelte', 'pdfmake', '@fontsource/source-sans-3']) {
      expect(licences).toMatch(new RegExp(`^${name} \\d`, 'mu'));
    }
  });

  it('runs from its own files alone: page, catalogue, worker threads and sheet', async () => {
    const { page, call } = await startIn(packaged.extracted);
    expect(await page()).toContain('<title>Chargewright</title>');
    expect(await call('about', {})).toMatchObject({ ok: true, value: { host: 'loopback' } });
    const sheet = await call('sheet.save', {
      runId: 'a-run',
      tourId: 'demo-tour',
      scenarioIds: null,
      withSwings: false,
      form: { as: 'pdf', paper: 'a4' },
    });
    expect(sheet).toMatchObject({ ok: true, value: { as: 'download', mediaType: 'application/pdf' } });
    const pdf = Buffer.from(String(sheet.value['base64']), 'base64');
    expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-');
    // The font files were found too: their names stand in the PDF (ISO 32000-1, 9.6).
    expect(pdf.toString('latin1')).toMatch(/\/BaseFont \/\w+\+Roboto-Regular/u);
  });
});
