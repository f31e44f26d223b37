import type { FileDesk } from '../../workbench/file-desk.ts';

/** A browser saves and opens files by itself: this desk hands both to the page. */
export const pageDesk: FileDesk = {
  save: ({ fileName, mediaType, bytes }) =>
    Promise.resolve({
      as: 'download',
      fileName,
      mediaType,
      base64: Buffer.from(bytes).toString('base64'),
    }),
  choose: () => Promise.resolve({ as: 'ask-page' }),
  chooseFolder: () => Promise.resolve({ as: 'ask-page' }),
};
