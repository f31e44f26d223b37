import { protocol } from 'electron';
import { answerPage, listPageFiles } from '../page-files.ts';
import { pageScheme } from './page-address.ts';

/** Makes our scheme count as an origin of its own. Chromium takes this only before it is ready. */
export function setupPageScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: pageScheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
  ]);
}

/** Serves the built page under our scheme. */
export function setupPage(rendererFolder: string): void {
  const files = listPageFiles(rendererFolder);
  protocol.handle(pageScheme, ({ method, url }) => answerPage(files, { method, url }));
}
