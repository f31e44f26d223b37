import { mkdir } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { FileDesk } from '../../workbench/file-desk.ts';
import { writeWhole } from '../write-whole.ts';

const plainText = /^text\/plain\b/;

/** Prints plain text and puts every other file into a folder. */
export function terminalDesk(folder: string, print: (text: string) => void): FileDesk {
  return {
    async save({ fileName, mediaType, bytes }) {
      if (plainText.test(mediaType)) {
        print(new TextDecoder().decode(bytes));
        return { as: 'saved', path: 'the terminal' };
      }
      await mkdir(folder, { recursive: true });
      const path = join(folder, basename(fileName));
      await writeWhole(path, bytes);
      return { as: 'saved', path };
    },
    choose: () => Promise.resolve({ as: 'cancelled' }),
    chooseFolder: () => Promise.resolve({ as: 'cancelled' }),
  };
}
