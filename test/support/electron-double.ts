import { EventEmitter } from 'node:events';

/*
 * Stands in for the `electron` module where its runtime is missing. It keeps what it was told, so that a test can look
 * at it, and lets a test play the system's part: emit an event, answer a dialog, send a message.
 */

interface FrameDouble {
  readonly origin: string;
}

export class ContentsDouble extends EventEmitter {
  mainFrame: FrameDouble = { origin: 'chargewright://app' };
  readonly done: string[] = [];
  url = '';
  openHandler: (details: { url: string }) => { action: string } = () => ({ action: 'allow' });
  setWindowOpenHandler(handler: ContentsDouble['openHandler']): void {
    this.openHandler = handler;
  }
  getURL(): string {
    return this.url;
  }
  reload(): void {
    this.done.push('reload');
  }
  forcefullyCrashRenderer(): void {
    this.done.push('crash');
  }
}

interface WindowOptions {
  readonly [name: string]: unknown;
  readonly webPreferences: Readonly<Record<string, unknown>>;
}

export class BrowserWindow extends EventEmitter {
  static windows: BrowserWindow[] = [];
  static getAllWindows(): readonly BrowserWindow[] {
    return BrowserWindow.windows;
  }
  readonly options: WindowOptions;
  readonly webContents = new ContentsDouble();
  readonly done: string[] = [];
  minimized = false;
  destroyed = false;
  constructor(options: WindowOptions) {
    super();
    this.options = options;
    BrowserWindow.windows.push(this);
    app.emit('web-contents-created', {}, this.webContents);
  }
  show(): void {
    this.done.push('show');
  }
  focus(): void {
    this.done.push('focus');
  }
  restore(): void {
    this.done.push('restore');
  }
  isMinimized(): boolean {
    return this.minimized;
  }
  isDestroyed(): boolean {
    return this.destroyed;
  }
  destroy(): void {
    this.destroyed = true;
    this.done.push('destroy');
  }
  loadURL(url: string): Promise<void> {
    this.done.push(`load ${url}`);
    return Promise.resolve();
  }
}

class AppDouble extends EventEmitter {
  readonly paths = new Map<string, string>();
  readonly done: string[] = [];
  holdsLock = true;
  setPath(name: string, path: string): void {
    this.paths.set(name, path);
  }
  getPath(name: string): string {
    return this.paths.get(name) ?? `/${name}`;
  }
  requestSingleInstanceLock(): boolean {
    return this.holdsLock;
  }
  quit(): void {
    this.done.push('quit');
  }
  exit(code: number): void {
    this.done.push(`exit ${code}`);
  }
  whenReady(): Promise<void> {
    return Promise.resolve();
  }
}
export const app = new AppDouble();

type Permission = (contents: unknown, permission: string, answer: (granted: boolean) => void) => void;

class SessionDouble extends EventEmitter {
  request: Permission = (_contents, _permission, answer) => answer(true);
  check: () => boolean = () => true;
  device: () => boolean = () => true;
  setPermissionRequestHandler(handler: Permission): void {
    this.request = handler;
  }
  setPermissionCheckHandler(handler: () => boolean): void {
    this.check = handler;
  }
  setDevicePermissionHandler(handler: () => boolean): void {
    this.device = handler;
  }
}
export const session = { defaultSession: new SessionDouble() };

type Answerer = (event: { senderFrame: FrameDouble | null }, ...values: unknown[]) => unknown;

export const ipcMain = {
  handlers: new Map<string, Answerer>(),
  handle(channel: string, handler: Answerer): void {
    ipcMain.handlers.set(channel, handler);
  },
};

/** Sends a message as the given frame; null is a frame that has gone. */
export function sendFrom(frame: FrameDouble | null, channel: string, ...values: unknown[]): unknown {
  const handler = ipcMain.handlers.get(channel);
  if (handler === undefined) throw new Error(`Nothing listens on ${channel}.`);
  // Electron copies what crosses between its processes.
  return structuredClone(handler({ senderFrame: frame }, ...structuredClone(values)));
}

export const ipcRenderer = {
  sent: [] as (readonly unknown[])[],
  async invoke(channel: string, ...values: unknown[]): Promise<unknown> {
    ipcRenderer.sent.push([channel, ...values]);
    const frame = BrowserWindow.windows[0]?.webContents.mainFrame ?? null;
    const handler = ipcMain.handlers.get(channel);
    return handler === undefined
      ? undefined
      : structuredClone(await handler({ senderFrame: frame }, ...values));
  },
};

interface Bridge {
  readonly host: string;
  call(name: unknown, input: unknown): Promise<unknown>;
}

export const contextBridge = {
  world: new Map<string, Bridge>(),
  exposeInMainWorld(name: string, bridge: Bridge): void {
    contextBridge.world.set(name, bridge);
  },
};

interface DialogOptions {
  readonly defaultPath?: string;
  readonly filters: readonly { readonly name: string; readonly extensions: readonly string[] }[];
}

interface QuestionOptions {
  readonly message: string;
  readonly buttons: readonly string[];
  readonly defaultId: number;
  readonly cancelId: number;
  readonly signal?: AbortSignal;
}

/**
 * `savePath` and `openPath` are what the rider picks; null is a dialog that was closed. `answer` is the button pressed, by
 * its words; null is the key that closes a question.
 */
export const dialog = {
  savePath: null as string | null,
  openPath: null as string | null,
  answer: null as string | null,
  asked: [] as DialogOptions[],
  questions: [] as QuestionOptions[],
  errors: [] as string[],
  showSaveDialog(_window: unknown, options: DialogOptions) {
    dialog.asked.push(options);
    return Promise.resolve({ canceled: dialog.savePath === null, filePath: dialog.savePath ?? '' });
  },
  showOpenDialog(_window: unknown, options: DialogOptions) {
    dialog.asked.push(options);
    const filePaths = dialog.openPath === null ? [] : [dialog.openPath];
    return Promise.resolve({ canceled: dialog.openPath === null, filePaths });
  },
  showMessageBoxSync(_window: unknown, options: QuestionOptions): number {
    dialog.questions.push(options);
    return dialog.answer === null ? options.cancelId : options.buttons.indexOf(dialog.answer);
  },
  showMessageBox(window: unknown, options: QuestionOptions): Promise<{ response: number }> {
    return Promise.resolve({ response: dialog.showMessageBoxSync(window, options) });
  },
  showErrorBox(title: string, text: string): void {
    dialog.errors.push(`${title}: ${text}`);
  },
};

interface MenuEntry {
  readonly label?: string;
  readonly role?: string;
  readonly submenu?: readonly MenuEntry[];
}

export const Menu = {
  shown: [] as readonly MenuEntry[],
  buildFromTemplate: (template: readonly MenuEntry[]) => template,
  setApplicationMenu(template: readonly MenuEntry[]): void {
    Menu.shown = template;
  },
};

interface SchemeDouble {
  readonly scheme: string;
  readonly privileges: Readonly<Record<string, boolean>>;
}
type PageHandler = (request: { method: string; url: string }) => Promise<Response>;

export const protocol = {
  schemes: [] as readonly SchemeDouble[],
  handlers: new Map<string, PageHandler>(),
  registerSchemesAsPrivileged(schemes: readonly SchemeDouble[]): void {
    protocol.schemes = schemes;
  },
  handle(scheme: string, handler: PageHandler): void {
    protocol.handlers.set(scheme, handler);
  },
};

/** A cancellable event that remembers whether it was cancelled. */
export function cancellable(details: { readonly url?: string } = {}) {
  const event = { ...details, prevented: false, preventDefault: () => void (event.prevented = true) };
  return event;
}

/** Back to a system on which nothing has happened yet. */
export function resetElectron(): void {
  app.removeAllListeners();
  app.paths.clear();
  app.done.length = 0;
  app.holdsLock = true;
  session.defaultSession = new SessionDouble();
  BrowserWindow.windows = [];
  ipcMain.handlers.clear();
  ipcRenderer.sent = [];
  contextBridge.world.clear();
  dialog.savePath = null;
  dialog.openPath = null;
  dialog.answer = null;
  dialog.asked = [];
  dialog.questions = [];
  dialog.errors = [];
  Menu.shown = [];
  protocol.schemes = [];
  protocol.handlers.clear();
}
