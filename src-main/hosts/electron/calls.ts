import { ipcMain, type BrowserWindow, type IpcMainInvokeEvent } from 'electron';
import { answer } from '../../../shared-types/answer.ts';
import type { Handlers } from '../../../shared-types/contract.ts';
import { failure } from '../../../shared-types/outcome.ts';
import type { Report } from '../fault-log.ts';
import { callChannel } from './channel.ts';
import type { PageAddress } from './page-address.ts';

export interface CallOptions {
  readonly window: BrowserWindow;
  readonly page: PageAddress;
  readonly handlers: Handlers;
  readonly report: Report;
}

/** Whether a message comes from the top frame of our window while it shows our page. */
function isOwnPage({ senderFrame }: IpcMainInvokeEvent, { window, page }: CallOptions): boolean {
  return (
    senderFrame !== null && senderFrame === window.webContents.mainFrame && senderFrame.origin === page.origin
  );
}

/** Answers the calls of the page. */
export function setupCalls(options: CallOptions): void {
  ipcMain.handle(callChannel, (event, name: unknown, input: unknown) =>
    isOwnPage(event, options)
      ? answer(options.handlers, name, input, options.report)
      : failure('forbidden', "Only Chargewright's own page may call it."),
  );
}
