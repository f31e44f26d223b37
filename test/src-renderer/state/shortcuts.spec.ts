import { describe, expect, it } from 'vitest';
import { screens } from '../../../src-renderer/state/route.svelte.ts';
import {
  commandOf,
  keysText,
  shortcutGroups,
  type Focus,
  type Press,
} from '../../../src-renderer/state/shortcuts.ts';

const all = shortcutGroups.flatMap(({ shortcuts }) => shortcuts);
const free: Focus = { typing: false, pending: false, letterKeys: true };
const press = (key: string, more: Partial<Press> = {}): Press => ({
  key,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...more,
});
const ctrl = { ctrlKey: true };

describe('commandOf()', () => {
  it.each([
    ['while typing', press('t'), { typing: true }],
    ['while letters are turned off', press('t'), { letterKeys: false }],
    ['for signs while they are turned off', press('?', { shiftKey: true }), { letterKeys: false }],
    ['for a capital', press('T', { shiftKey: true }), {}],
    ['with the Alt key', press('t', { altKey: true }), {}],
    ['for a letter of a chord without its key', press('z'), {}],
    ['for a letter of its own with Ctrl, which the browser keeps', press('t', ctrl), {}],
    ['for an undo over text that is being written', press('z', ctrl), { typing: true, pending: true }],
  ])('is none %s', (_, given, focus) => {
    expect(commandOf(given, { ...free, ...focus })).toBeNull();
  });

  it.each([
    [press('t'), { as: 'go', screen: 'tours' }],
    [press('/'), { as: 'search' }],
    [press('/', { shiftKey: true }), { as: 'search' }],
    [press('?', { shiftKey: true }), { as: 'list' }],
    [press('z', ctrl), { as: 'undo' }],
    [press('z', { metaKey: true }), { as: 'undo' }],
    [press('Z', { ...ctrl, shiftKey: true }), { as: 'redo' }],
    [press('y', ctrl), { as: 'redo' }],
  ])('of %j is %j', (given, command) => {
    expect(commandOf(given, free)).toEqual(command);
  });

  it('takes back a change from a field whose text is stored, letters on or off', () => {
    const focus = { typing: true, pending: false, letterKeys: false };
    expect(commandOf(press('z', ctrl), focus)).toEqual({ as: 'undo' });
  });
});

describe('the shortcuts', () => {
  it('have no key twice', () => {
    const keys = all.flatMap(({ key }) => key ?? []);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('go to every screen', () => {
    const reached = all.flatMap(({ command }) => (command.as === 'go' ? [command.screen] : []));
    expect(reached.toSorted()).toEqual(screens.toSorted());
  });

  it('take no chord that browsers keep for themselves', () => {
    const chords = all.flatMap((shortcut) => shortcut.chords.map(({ key }) => key));
    for (const kept of ['f', 'l', 'n', 'p', 'q', 'r', 's', 't', 'w']) expect(chords).not.toContain(kept);
  });

  it('are written as on the keys of the computer', () => {
    const redo = all.find(({ command }) => command.as === 'redo')!;
    const tours = all.find(({ words }) => words === 'Tours')!;
    expect(keysText(tours, false)).toBe('T');
    expect(keysText(redo, false)).toBe('Ctrl + Shift + Z or Ctrl + Y');
    expect(keysText(redo, true)).toBe('Cmd + Shift + Z or Cmd + Y');
  });
});
