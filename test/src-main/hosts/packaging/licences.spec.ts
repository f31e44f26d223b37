import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { licenceList } from '../../../../src-main/hosts/packaging/licence-list.ts';
import {
  isAllowed,
  readLicence,
  type ShippedLicence,
} from '../../../../src-main/hosts/packaging/licences.ts';
import { readLock } from '../../../../src-main/hosts/packaging/locked-packages.ts';
import { leftBehind, shippedPackages } from '../../../../src-main/hosts/packaging/shipped-packages.ts';
import { temporaryFolder } from '../temporary-folder.ts';

const project = resolve(import.meta.dirname, '../../../..');

/** A package as it might be installed. */
function installed(changes: Partial<ShippedLicence> = {}): ShippedLicence {
  return {
    folder: 'node_modules/some',
    name: 'some',
    version: '1.0.0',
    licence: 'MIT',
    author: 'Somebody',
    text: '',
    ...changes,
  };
}

describe('a licence', () => {
  it.each([
    '',
    'GPL-3.0-only',
    'SEE LICENSE IN README',
    '(MIT AND GPL-2.0)',
    'MIT OR Unlicensed',
    'UNLICENSED',
  ])('is refused as %j', (licence) => {
    expect(isAllowed(installed({ licence }))).toBe(false);
    expect(() => licenceList(project, [installed({ licence, text: 'Words.' })])).toThrow('node_modules/some');
  });

  it.each(['MIT', 'OFL-1.1', '(MIT AND Zlib)', 'Apache-2.0 OR MIT'])('is allowed as %j', (licence) => {
    expect(isAllowed(installed({ licence }))).toBe(true);
  });

  it.each([{ licence: 'Apache-2.0' }, { author: '' }])('can not ship without its words: %j', (changes) => {
    expect(() => licenceList(project, [installed(changes)])).toThrow('carries no licence text');
  });

  it('under MIT without a text ships with its author and the words of that licence', () => {
    const list = licenceList(project, [installed()]);
    expect(list).toContain('some 1.0.0 (MIT)\n\nCopyright (c) Somebody\n\nPermission is hereby granted');
    expect(list).not.toContain('Copyright (c) 2026');
  });

  it('is read with every text that the package carries', () => {
    const folder = temporaryFolder({
      'node_modules/some/package.json': JSON.stringify({
        name: 'some',
        version: '1.0.0',
        license: 'Apache-2.0',
        author: { name: 'Somebody', email: 'somebody@some.invalid' },
      }),
      'node_modules/some/LICENSE.md': 'The licence.\n',
      'node_modules/some/NOTICE': 'The notice.\n',
      'node_modules/some/licensed.js': 'code',
    });
    expect(readLicence(folder, 'node_modules/some')).toEqual(
      installed({ licence: 'Apache-2.0', text: 'The licence.\n\nThe notice.' }),
    );
  });
});

describe('what ships with the program', () => {
  const lock = readLock(project);
  const shipped = shippedPackages(project, lock);

  it('says to build first where there is no built app to look at', () => {
    expect(() => shippedPackages(temporaryFolder(), lock)).toThrow('npm run build');
  });

  it('is all under licences that are allowed, and can be passed on with their words', () => {
    const licences = shipped.map((folder) => readLicence(project, folder));
    expect(licences.filter((licence) => !isAllowed(licence))).toEqual([]);
    const list = licenceList(project, licences);
    for (const { name, version, licence } of licences)
      expect(list).toContain(`\n${name} ${version} (${licence})\n`);
  });

  it('counts what only the bundler knows of: the code and the typeface of the page', () => {
    for (const name of ['svelte', 'chart.js', '@fontsource/source-sans-3']) {
      expect(shipped).toContain(`node_modules/${name}`);
    }
  });

  it('leaves behind what opens a browser, with its helpers, and what the page holds already', () => {
    const behind = leftBehind(lock);
    expect(behind).toEqual(
      expect.arrayContaining(['node_modules/open', 'node_modules/wsl-utils', 'node_modules/@kurkle/color']),
    );
    expect(behind).not.toContain('node_modules/pdfmake');
    expect(shipped).not.toContain('node_modules/open');
  });

  it('carries a typeface for the sheet that is under the licence the list says', () => {
    const font = readFileSync(join(project, 'node_modules/pdfmake/fonts/Roboto/Roboto-Regular.ttf'));
    // The name table of a font file holds its texts in UTF-16, high byte first (OpenType 1.9, `name`).
    const said = Buffer.from('SIL Open Font License, Version 1.1', 'utf16le').swap16();
    expect(font.includes(said)).toBe(true);
  });
});
