import { dialog, type BrowserWindow } from 'electron';

const stay = 0;
const leave = 1;

/** Asks before the window closes, or its page is loaded again, while the page holds something that is not stored. */
export function askBeforeLeaving(window: BrowserWindow): void {
  window.webContents.on('will-prevent-unload', (event) => {
    const answer = dialog.showMessageBoxSync(window, {
      type: 'question',
      message: 'Something is not stored yet.',
      detail: 'The screens marked ‘not stored’ hold it. It is lost when you leave now.',
      buttons: ['Stay', 'Leave without it'],
      defaultId: stay,
      cancelId: stay,
    });
    // Here preventing means: not to heed the page, which would stay.
    if (answer === leave) event.preventDefault();
  });
}
