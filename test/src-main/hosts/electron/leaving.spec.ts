import { beforeEach, describe, expect, it, vi } from 'vitest';
import { createWindow } from '../../../../src-main/hosts/electron/window.ts';
import { BrowserWindow, cancellable, dialog, resetElectron } from '../../../support/electron-double.ts';

vi.mock('electron', () => import('../../../support/electron-double.ts'));

describe('leaving a page that holds something unstored', () => {
  beforeEach(() => {
    resetElectron();
    createWindow('preload.cjs');
  });

  /** Whether the window goes, although its page would stay. */
  function goes(): boolean {
    const event = cancellable();
    BrowserWindow.windows[0]!.webContents.emit('will-prevent-unload', event);
    return event.prevented;
  }

  it.each([
    ['the question is closed by a key', null],
    ['the rider stays', 'Stay'],
  ])('keeps the window when %s', (_, answer) => {
    dialog.answer = answer;
    expect(goes()).toBe(false);
  });

  it('lets the window go when the rider says so', () => {
    dialog.answer = 'Leave without it';
    expect(goes()).toBe(true);
  });

  it('asks in a sentence, with staying as what Enter does', () => {
    goes();
    const [question] = dialog.questions;
    expect(question?.message).toBe('Something is not stored yet.');
    expect(question?.buttons[question.defaultId]).toBe('Stay');
  });
});
