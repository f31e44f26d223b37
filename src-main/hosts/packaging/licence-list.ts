import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isAllowed, type ShippedLicence } from './licences.ts';

/** Works that packages carry within, under a licence of their own. */
const carriedInside = [
  'better-sqlite3 carries SQLite, which is in the public domain.',
  'brotli carries a decoder under Apache-2.0, as the heads of its files say.',
  'pdfkit carries the metrics of the fourteen standard fonts of PDF; the heads of its files say how they may be passed on.',
  'pdfmake carries the typeface of the sheet under OFL-1.1, as the font files themselves say.',
];

/** The words of the MIT licence, taken from our own below its copyright line. */
function mitWords(projectFolder: string): string {
  const own = readFileSync(join(projectFolder, 'LICENSE'), 'utf8');
  return own.slice(own.indexOf('Permission is hereby granted')).trim();
}

function section(licence: ShippedLicence, mit: string): string {
  const { name, version, author, text } = licence;
  const words = text === '' ? `Copyright (c) ${author}\n\n${mit}` : text;
  return `${name} ${version} (${licence.licence})\n\n${words}`;
}

/**
 * The licences of all that ships with the program, as one text for whoever received it. Throws where a licence is not
 * allowed, or where a package carries no text and none can be made of its author and the MIT words.
 */
export function licenceList(projectFolder: string, licences: readonly ShippedLicence[]): string {
  for (const each of licences) {
    if (!isAllowed(each)) {
      throw new Error(
        `${each.folder} is under "${each.licence}": see the allowed licences in packaging/licences.ts.`,
      );
    }
    if (each.text === '' && (each.licence !== 'MIT' || each.author === '')) {
      throw new Error(`${each.folder} (${each.licence}) carries no licence text to ship along.`);
    }
  }
  const mit = mitWords(projectFolder);
  const head = [
    'Chargewright ships with the work of others. Their licences follow; those of the window itself (Electron,',
    'Chromium and Node.js) lie beside this file or in the folder above it.',
    '',
    ...carriedInside,
  ].join('\n');
  return `${[head, ...licences.map((each) => section(each, mit))].join(`\n\n${'-'.repeat(80)}\n\n`)}\n`;
}
