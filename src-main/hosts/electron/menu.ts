import { Menu, type MenuItemConstructorOptions } from 'electron';

const separator: MenuItemConstructorOptions = { type: 'separator' };

const template: MenuItemConstructorOptions[] = [
  { label: 'File', submenu: [{ role: 'quit', label: 'Quit Chargewright' }] },
  {
    label: 'Edit',
    submenu: [
      { role: 'undo', label: 'Undo' },
      { role: 'redo', label: 'Redo' },
      separator,
      { role: 'cut', label: 'Cut' },
      { role: 'copy', label: 'Copy' },
      { role: 'paste', label: 'Paste' },
      { role: 'selectAll', label: 'Select all' },
    ],
  },
  {
    label: 'View',
    submenu: [
      { role: 'zoomIn', label: 'Larger' },
      { role: 'zoomOut', label: 'Smaller' },
      { role: 'resetZoom', label: 'Usual size' },
      separator,
      { role: 'togglefullscreen', label: 'Full screen' },
      { role: 'reload', label: 'Load again' },
    ],
  },
  {
    label: 'Window',
    submenu: [
      { role: 'minimize', label: 'Minimise' },
      { role: 'close', label: 'Close' },
    ],
  },
];

export function setupMenu(): void {
  Menu.setApplicationMenu(Menu.buildFromTemplate(template));
}
