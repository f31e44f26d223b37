import type {
  CatalogueBackup,
  CatalogueBeside,
  CatalogueChoices,
  CatalogueState,
  StorageFault,
} from '../../../shared-types/catalogue-file.ts';
import type { Handlers } from '../../../shared-types/contract.ts';
import type { Diagnostics } from '../../../shared-types/diagnostics.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';

type PlaceCall = Extract<keyof Handlers, `catalogue.${string}` | `diagnostics.${string}`>;

export const soundBackup: CatalogueBackup = {
  name: 'catalogue-20270503T120000000Z-step-230.sqlite3',
  madeAt: '2027-05-03T12:00:00.000Z',
  bytes: 233_472,
  unfit: null,
  holds: { items: 26, tours: 1, scenarios: 3, readings: 0 },
};

export const brokenBackup: CatalogueBackup = {
  ...soundBackup,
  name: 'catalogue-20270504T120000000Z-step-230.sqlite3',
  madeAt: '2027-05-04T12:00:00.000Z',
  unfit: 'A part of it is damaged.',
  holds: null,
};

export const catalogueBeside: CatalogueBeside = {
  path: '/data/catalogue-2.sqlite3',
  changedAt: '2027-05-01T12:00:00.000Z',
  bytes: 400_000,
  unfit: null,
  holds: { items: 3, tours: 1, scenarios: 1, readings: 9 },
};

export const invented: Diagnostics = {
  version: '0.1.0',
  host: 'loopback',
  parts: [
    { name: 'Node.js', version: '24.0.0' },
    { name: 'SQLite', version: '3.50.0' },
  ],
  dataFolder: '/home/rider/data',
  catalogue: { file: '/home/rider/data/catalogue.sqlite3', bytes: 233_472, step: 230 },
  logFile: '/home/rider/data/faults.log',
  faults: [],
  homeFolder: '/home/rider',
};

/** Where the catalogue of the fake is, and what a test makes of it. */
export class FakePlace {
  state: CatalogueState = {
    file: '/data/catalogue.sqlite3',
    trouble: null,
    notKept: null,
    backupFault: null,
  };
  choices: CatalogueChoices = {
    backupFolder: '/data/backups',
    backups: [brokenBackup, soundBackup],
    beside: [catalogueBeside],
  };
  /** The sentence with which every change of the place is refused; null where none is. */
  refusal: string | null = null;
  readonly reported: string[] = [];

  fail(fault: StorageFault, message = 'It does not open.'): void {
    this.state = { ...this.state, trouble: { fault, message } };
  }

  readonly handlers: Pick<Handlers, PlaceCall> = {
    'catalogue.state': () => success(this.state),
    'catalogue.tryAgain': () => success(this.state),
    'catalogue.choices': () => success(this.choices),
    'catalogue.backUp': () => this.#refusable(() => soundBackup),
    'catalogue.restore': () => this.#refusable(() => this.#use('/data/catalogue-3.sqlite3')),
    'catalogue.startEmpty': () => this.#refusable(() => this.#use('/data/catalogue-4.sqlite3')),
    'catalogue.openOther': ({ path }) => {
      if (path === null) return success({ as: 'ask-page' });
      if (!path.startsWith('/'))
        return failure('bad-input', 'No.', [{ path: 'path', allowed: 'a path from the root on', got: path }]);
      return this.#refusable(() => ({ as: 'opened', state: this.#use(path) }) as const);
    },
    'diagnostics.get': () => success(invented),
    'diagnostics.report': ({ where, what }) => {
      this.reported.push(`${where}: ${what}`);
      return success({ logged: true });
    },
  };

  #refusable<T>(value: () => T): Outcome<T> {
    return this.refusal === null ? success(value()) : failure('storage', this.refusal);
  }

  #use(file: string): CatalogueState {
    this.state = { ...this.state, file, trouble: null };
    return this.state;
  }
}
