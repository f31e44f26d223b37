import { app } from 'electron';
import { join } from 'node:path';

/** Puts Chromium's own files beside the catalogue instead of into a second folder of the system. */
export function setupUserData(dataFolder: string): void {
  app.setPath('userData', join(dataFolder, 'window'));
}
