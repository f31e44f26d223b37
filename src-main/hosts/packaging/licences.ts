import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Licences under which others' work may ship with the program, as SPDX names them: none asks more than to be shipped along. */
export const allowedLicences: ReadonlySet<string> = new Set([
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'CC0-1.0',
  'ISC',
  'MIT',
  'OFL-1.1',
  'Zlib',
]);

/** Packages whose package file names no licence; read in the text they carry. */
const readInTheText: Readonly<Record<string, string>> = { 'png-js': 'MIT' };

const textFile = /^(licen[cs]e|copying|notice)\b/iu;

/** One package of others and under what it may be shipped. */
export interface ShippedLicence {
  /** Where it is installed, as `node_modules/sax`. */
  readonly folder: string;
  readonly name: string;
  readonly version: string;
  /** An SPDX expression; empty where the package names none. */
  readonly licence: string;
  readonly author: string;
  /** What stands in its licence and notice files; empty where it carries none. */
  readonly text: string;
}

interface PackageFile {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly author?: string | { readonly name: string };
}

/** Reads what an installed package says of its own licence. */
export function readLicence(projectFolder: string, folder: string): ShippedLicence {
  const path = join(projectFolder, folder);
  const { name, version, license, author } = JSON.parse(
    readFileSync(join(path, 'package.json'), 'utf8'),
  ) as PackageFile;
  const texts = readdirSync(path)
    .filter((file) => textFile.test(file))
    .toSorted()
    .map((file) => readFileSync(join(path, file), 'utf8').trim());
  return {
    folder,
    name,
    version,
    licence: license ?? readInTheText[name] ?? '',
    author: (typeof author === 'object' ? author.name : author) ?? '',
    text: texts.join('\n\n'),
  };
}

/** Whether all licences of an expression such as `(MIT AND Zlib)` are allowed; a package that names none is refused. */
export function isAllowed({ licence }: ShippedLicence): boolean {
  const names = licence.split(/[() ]+(?:AND |OR )?/u).filter((name) => name !== '');
  return names.length > 0 && names.every((name) => allowedLicences.has(name));
}
