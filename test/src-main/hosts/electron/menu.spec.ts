import { beforeEach, describe, expect, it, vi } from 'vitest';
import { setupMenu } from '../../../../src-main/hosts/electron/menu.ts';
import { Menu, resetElectron } from '../../../support/electron-double.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

function roles(): readonly string[] {
  return Menu.shown.flatMap(({ submenu = [] }) => submenu.flatMap(({ role }) => role ?? []));
}

describe('the menu', () => {
  beforeEach(() => {
    resetElectron();
    setupMenu();
  });

  it('offers no way into the page by developer tools', () => {
    expect(roles()).not.toContain('toggleDevTools');
  });

  it('words every entry itself', () => {
    const entries = Menu.shown
      .flatMap(({ submenu = [] }) => submenu)
      .filter(({ role }) => role !== undefined);
    expect(entries.length).toBeGreaterThan(0);
    for (const { role, label } of entries)
      expect([role, label]).toEqual([role, expect.stringMatching(/^[A-Z]/)]);
  });

  it('has the keys that editing a field needs', () => {
    expect(roles()).toEqual(expect.arrayContaining(['undo', 'redo', 'cut', 'copy', 'paste', 'selectAll']));
  });
});
