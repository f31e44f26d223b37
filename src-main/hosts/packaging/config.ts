import type { Configuration, FileSet } from 'electron-builder';
import { resolve } from 'node:path';
import { bundledListName } from './bundled-packages.ts';
import { readLock } from './locked-packages.ts';
import { leftBehind } from './shipped-packages.ts';

const project = resolve(import.meta.dirname, '../../..');

/** The licences of all that ships, written before the packager runs and put beside the program. */
export const licenceFile = 'out/third-party-licences.txt';

/** What packages carry that no running program reads: sources, tests, documents, builds for browsers. */
const notRead = [
  '!node_modules/**/*.{map,md,markdown,ts,mts,cts}',
  '!node_modules/**/{test,tests,docs,examples,benchmark}/**',
  '!node_modules/{zod,fontkit,restructure,@swc/helpers,@noble/ciphers,@noble/hashes,pdfmake}/src/**',
  '!node_modules/pdfmake/build/**',
  '!node_modules/pdfkit/js/pdfkit.{es,standalone}.js',
  '!node_modules/better-sqlite3/{build,deps,prebuilds,src}/**',
];

const binaries = 'node_modules/better-sqlite3/prebuilds';

/**
 * The one binary of the database engine that a system needs: `darwin`, `linux` or `win32`; the packager knows the `arch`.
 * A set of its own, since the packager takes a platform's plain patterns for all there is.
 */
function binaryFor(system: string): FileSet[] {
  return [{ filter: [`${binaries}/${system}-\${arch}.node`] }];
}

const config: Configuration = {
  appId: 'app.chargewright.workbench',
  productName: 'Chargewright',
  copyright: 'Copyright © 2026 The Chargewright developers',
  // Installers name a sender and a home. `.invalid` never resolves (RFC 2606): there is no address yet to write to.
  extraMetadata: {
    author: { name: 'The Chargewright developers', email: 'developers@chargewright.invalid' },
    homepage: 'https://chargewright.invalid',
  },
  directories: { output: 'out/packages', buildResources: 'src-main/hosts/packaging' },
  icon: 'icons',
  publish: null,

  files: [
    'out/{main,preload,renderer}/**',
    '!out/main/{start,demo}.js',
    `!out/*/${bundledListName}`,
    'LICENSE',
    ...leftBehind(readLock(project)).map((folder) => `!${folder}/**`),
    ...notRead,
  ],
  extraResources: [{ from: licenceFile, to: 'third-party-licences.txt' }],
  asar: { smartUnpack: false },
  // A library is loaded by the system, which can't look into an archive.
  asarUnpack: [`${binaries}/*.node`],
  // The shipped binary speaks Node-API and serves any Electron: nothing is compiled anew.
  npmRebuild: false,

  // The program is a window on its own archive and nothing else: neither a Node.js nor something to inspect.
  electronFuses: {
    runAsNode: false,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableCookieEncryption: true,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    // On, it asks for a snapshot of one's own beside the program; there is none.
    loadBrowserProcessSpecificV8Snapshot: false,
    // The page has a scheme of its own and is never loaded as a file.
    grantFileProtocolExtraPrivileges: false,
  },

  linux: {
    target: ['AppImage', 'deb'],
    category: 'Utility',
    synopsis: 'Compares ways of keeping devices charged on a long cycle tour',
    executableName: 'chargewright',
    files: binaryFor('linux'),
  },
  mac: {
    target: ['dmg', 'zip'],
    category: 'public.app-category.utilities',
    files: binaryFor('darwin'),
  },
  win: {
    target: ['nsis'],
    files: binaryFor('win32'),
  },
  nsis: {
    oneClick: false,
    // The catalogue is the rider's, not the program's.
    deleteAppDataOnUninstall: false,
  },
};

export default config;
