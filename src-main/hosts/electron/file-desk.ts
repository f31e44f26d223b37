import { app, dialog, type BrowserWindow, type FileFilter } from 'electron';
import { basename, extname, join } from 'node:path';
import type { FileDesk } from '../../workbench/file-desk.ts';
import { writeWhole } from '../write-whole.ts';
import { readText } from './read-text.ts';

const openDialogs = {
  'inventory-csv': {
    title: 'Read an inventory',
    filters: [{ name: 'Table (CSV)', extensions: ['csv', 'txt'] }],
  },
  'catalogue-json': {
    title: 'Take in a catalogue',
    filters: [{ name: 'Catalogue (JSON)', extensions: ['json'] }],
  },
};

function filterFor(fileName: string): FileFilter {
  const extension = extname(fileName).slice(1);
  return { name: extension.toUpperCase(), extensions: [extension] };
}

/** Asks where files go and come from in dialogs of the window. A disk that refuses rejects with a `FileFault`. */
export function dialogDesk(window: BrowserWindow): FileDesk {
  return {
    async save({ fileName, bytes }) {
      const { canceled, filePath } = await dialog.showSaveDialog(window, {
        defaultPath: join(app.getPath('documents'), basename(fileName)),
        filters: [filterFor(fileName)],
      });
      if (canceled || filePath === '') return { as: 'cancelled' };
      await writeWhole(filePath, bytes);
      return { as: 'saved', path: filePath };
    },
    async choose(purpose) {
      const { canceled, filePaths } = await dialog.showOpenDialog(window, {
        ...openDialogs[purpose],
        properties: ['openFile'],
      });
      const [path] = filePaths;
      if (canceled || path === undefined) return { as: 'cancelled' };
      return { as: 'chosen', name: basename(path), text: await readText(path) };
    },
    async chooseFolder() {
      const { canceled, filePaths } = await dialog.showOpenDialog(window, {
        title: 'Use the catalogue of another folder',
        properties: ['openDirectory', 'createDirectory'],
      });
      const [path] = filePaths;
      return canceled || path === undefined ? { as: 'cancelled' } : { as: 'chosen', path };
    },
  };
}
