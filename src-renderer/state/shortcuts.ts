import { screens, type Screen } from './route.svelte.ts';
import { screenNames } from './screen-names.ts';

/** What a shortcut does. */
export type Command =
  | { readonly as: 'go'; readonly screen: Screen }
  | { readonly as: 'search' | 'add-item' | 'undo' | 'redo' | 'skip' | 'list' };

export interface Shortcut {
  readonly command: Command;
  readonly words: string;
  /** A single key, which does nothing while something is typed and can be turned off; null where there is none. */
  readonly key: string | null;
  /** Letters that stand for the command with Ctrl or Cmd. */
  readonly chords: readonly Chord[];
}

interface Chord {
  readonly key: string;
  readonly shift: boolean;
}

export interface ShortcutGroup {
  readonly title: string;
  readonly shortcuts: readonly Shortcut[];
}

const screenKeys: Readonly<Record<Screen, string>> = {
  start: 'b',
  inventory: 'i',
  'field-log': 'f',
  tours: 't',
  scenarios: 's',
  'trade-offs': 'o',
  'kit-search': 'k',
  'upgrade-check': 'u',
  'stop-planner': 'p',
  sheet: 'c',
  assumptions: 'e',
  about: 'a',
};

const byKey = (command: Command, words: string, key: string): Shortcut => ({
  command,
  words,
  key,
  chords: [],
});

/** All there are. None is a chord that browsers keep for themselves. */
export const shortcutGroups: readonly ShortcutGroup[] = [
  {
    title: 'Go to',
    shortcuts: [
      ...screens.map((screen) => byKey({ as: 'go', screen }, screenNames[screen], screenKeys[screen])),
      byKey({ as: 'skip' }, 'The content of the screen', 'm'),
    ],
  },
  {
    title: 'Inventory',
    shortcuts: [
      byKey({ as: 'search' }, 'Search in the inventory', '/'),
      byKey({ as: 'add-item' }, 'Add an item', 'n'),
    ],
  },
  {
    title: 'Anywhere',
    shortcuts: [
      {
        command: { as: 'undo' },
        words: 'Take back the last change',
        key: null,
        chords: [{ key: 'z', shift: false }],
      },
      {
        command: { as: 'redo' },
        words: 'Make it again',
        key: null,
        chords: [
          { key: 'z', shift: true },
          { key: 'y', shift: false },
        ],
      },
      byKey({ as: 'list' }, 'This list', '?'),
    ],
  },
];

/** What a key event tells of itself. */
export interface Press {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
}

/** Where the press fell. */
export interface Focus {
  /** On a field that takes letters. */
  readonly typing: boolean;
  /** On a field whose text was changed and not yet taken: the browser's own undo is for that. */
  readonly pending: boolean;
  /** Single keys are turned on. */
  readonly letterKeys: boolean;
}

const all = shortcutGroups.flatMap(({ shortcuts }) => shortcuts);

/** The command a press stands for; null for none. */
export function commandOf(press: Press, { typing, pending, letterKeys }: Focus): Command | null {
  if (press.altKey) return null;
  const key = press.key.toLowerCase();
  if (press.ctrlKey || press.metaKey) return pending ? null : chordCommand(key, press.shiftKey);
  if (typing || !letterKeys) return null;
  // A sign may need the shift key, by the keyboard; a letter with it is a capital.
  const found = all.find((shortcut) => shortcut.key === key);
  return found === undefined || (press.shiftKey && isLetter(key)) ? null : found.command;
}

function chordCommand(key: string, shift: boolean): Command | null {
  const found = all.find(({ chords }) => chords.some((chord) => chord.key === key && chord.shift === shift));
  return found?.command ?? null;
}

function isLetter(key: string): boolean {
  return /^\p{L}$/u.test(key);
}

/** How a shortcut is written: `I`, `Ctrl + Z`, on an Apple computer `Cmd + Z`. */
export function keysText({ key, chords }: Shortcut, apple: boolean): string {
  const written = chords.map((chord) => chordText(chord, apple));
  return [...(key === null ? [] : [key.toUpperCase()]), ...written].join(' or ');
}

function chordText({ key, shift }: Chord, apple: boolean): string {
  const parts = [apple ? 'Cmd' : 'Ctrl', ...(shift ? ['Shift'] : []), key.toUpperCase()];
  return parts.join(' + ');
}
