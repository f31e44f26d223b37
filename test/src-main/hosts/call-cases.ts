import { expect } from 'vitest';

/** A valid accessory, to be spoilt one field at a time. */
export const cable = {
  kind: 'accessory',
  label: 'Cable, 1 m',
  state: 'owned',
  quantity: 1,
  massG: 24,
  price: { minor: 900, currency: 'EUR' },
  lifeYears: null,
  resale: null,
  mount: 'frame',
  forHub: false,
  notes: '',
};

export interface CallCase {
  readonly title: string;
  readonly name: string;
  readonly input: unknown;
  readonly outcome: unknown;
}

function badField(path: string, allowed: string, got: string): unknown {
  const fields = [{ path, allowed, got }];
  return { ok: false, error: { code: 'bad-input', message: `${path}: allowed is ${allowed}.`, fields } };
}

function failed(code: string, message: unknown): unknown {
  return { ok: false, error: { code, message, fields: [] } };
}

const stateChoice = 'one of: owned, considering, retired';

/** What both hosts must answer, word for word, over the small workbench. */
export const callCases: readonly CallCase[] = [
  {
    title: 'a call that is not in the contract',
    name: 'items.explode',
    input: {},
    outcome: failed('unknown-call', 'There is no call named "items.explode".'),
  },
  {
    title: 'a name that every object inherits',
    name: 'constructor',
    input: {},
    outcome: failed('unknown-call', 'There is no call named "constructor".'),
  },
  {
    title: 'a negative mass',
    name: 'items.save',
    input: { item: { ...cable, massG: -1 } },
    outcome: badField('item.massG', 'a number from 0 to 20,000 g', '-1'),
  },
  {
    title: 'an empty label',
    name: 'items.save',
    input: { item: { ...cable, label: ' ' } },
    outcome: badField('item.label', 'text of 1 to 80 characters in one line', '" "'),
  },
  {
    title: 'a state that does not exist',
    name: 'items.setState',
    input: { id: 'cable', state: 'lost' },
    outcome: badField('state', stateChoice, '"lost"'),
  },
  {
    title: 'a field that nobody asked for',
    name: 'items.list',
    input: { all: true },
    outcome: {
      ok: false,
      error: {
        code: 'bad-input',
        message: 'The input: allowed is no field named all.',
        fields: [{ path: '', allowed: 'no field named all', got: '{"all":true}' }],
      },
    },
  },
  {
    title: 'no input at all',
    name: 'items.list',
    input: null,
    outcome: {
      ok: false,
      error: {
        code: 'bad-input',
        message: expect.stringContaining('The input') as unknown,
        fields: [{ path: '', allowed: expect.any(String) as unknown, got: 'null' }],
      },
    },
  },
  {
    title: 'a failure of the workbench',
    name: 'tours.remove',
    input: { id: 'gone' },
    outcome: failed('not-found', 'This small workbench does not do that.'),
  },
  {
    title: 'a fault of the workbench, without its details',
    name: 'stations.list',
    input: {},
    outcome: failed('internal', expect.not.stringContaining('climate table')),
  },
  {
    title: 'a good call',
    name: 'items.save',
    input: { item: cable },
    outcome: { ok: true, value: { ...cable, id: 'item-1' } },
  },
];
