import type { LoggedFault } from '../../shared-types/diagnostics.ts';

/** In characters: the longest name of a part of the page, and more of a stack than anybody reads. */
const longestWhere = 240;
const longestEntry = 4000;

const indent = '    ';
const firstLine = /^(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z) (.*?): (.*)$/u;

/**
 * An entry of the log: its first line names the moment and the part, further ones are indented. So no text within a fault
 * can look like an entry of its own, and none can steer a terminal.
 */
export function entryText({ at, where, what }: LoggedFault): string {
  const part = visible(where.slice(0, longestWhere)).replaceAll('\n', ' ').replaceAll(': ', ', ');
  const lines = visible(what.slice(0, longestEntry)).split('\n');
  return `${cut(`${at} ${part}: ${lines.join(`\n${indent}`)}`)}\n`;
}

/** The entries of a part of a log, in their order; lines that belong to none are passed over. */
export function readEntries(text: string): readonly LoggedFault[] {
  const entries: LoggedFault[] = [];
  for (const line of text.split('\n')) {
    const [, at = '', where = '', what = ''] = firstLine.exec(line) ?? [];
    const last = entries.at(-1);
    if (!Number.isNaN(Date.parse(at))) entries.push({ at, where, what });
    else if (last !== undefined && line.startsWith(indent)) {
      entries[entries.length - 1] = { ...last, what: `${last.what}\n${line.slice(indent.length)}` };
    }
  }
  return entries;
}

/** The text with each character that is not seen written as its number, but for the ends of lines. */
function visible(text: string): string {
  return text
    .replaceAll('\r\n', '\n')
    .replaceAll('\t', ' ')
    .replace(/(?!\n)[\p{C}\p{Zl}\p{Zp}]/gu, (letter) => `\\u{${letter.codePointAt(0)!.toString(16)}}`);
}

function cut(entry: string): string {
  return entry.length > longestEntry ? `${entry.slice(0, longestEntry - 1)}…` : entry;
}
