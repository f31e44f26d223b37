import { describe, expect, it } from 'vitest';
import { answer } from '../../shared-types/answer.ts';
import { callNames, contract, type Handlers } from '../../shared-types/contract.ts';
import { itemDraft, itemKinds } from '../../shared-types/item.ts';
import { failure, success } from '../../shared-types/outcome.ts';

const seen: unknown[] = [];
const handlers = Object.fromEntries(
  callNames.map((name) => [name, (input: unknown) => (seen.push(input), success(name))]),
) as unknown as Handlers;
const ask = (name: unknown, input: unknown, other: Partial<Handlers> = {}) => {
  seen.length = 0;
  const faults: unknown[] = [];
  return answer({ ...handlers, ...other }, name, input, (_, fault) => faults.push(fault)).then((outcome) => ({
    outcome,
    faults,
  }));
};

describe('answer()', () => {
  it.each(['nothing.like.it', '__proto__', 'constructor', '', 7, null, undefined, {}])(
    'knows no call named %j',
    async (name) => {
      const { outcome } = await ask(name, {});
      expect(outcome).toMatchObject({ ok: false, error: { code: 'unknown-call' } });
      expect(seen).toEqual([]);
    },
  );

  it('hands no handler an input its schema refuses, and says why', async () => {
    const { outcome } = await ask('tours.remove', { id: 'NOT AN ID' });
    expect(outcome).toMatchObject({
      ok: false,
      error: { code: 'bad-input', fields: [{ path: 'id', got: '"NOT AN ID"' }] },
    });
    expect(seen).toEqual([]);
  });

  it('refuses a field that is not in the schema', async () => {
    const { outcome } = await ask('items.list', { extra: 1 });
    expect(outcome).toMatchObject({ error: { fields: [{ allowed: 'no field named extra' }] } });
  });

  it.each(['text', 7, null, [], undefined])('refuses %j as an input', async (input) => {
    expect((await ask('items.list', input)).outcome).toMatchObject({
      ok: false,
      error: { code: 'bad-input' },
    });
  });

  it('refuses what JSON has no word for, as a name and as an input', async () => {
    const ringed: Record<string, unknown> = {};
    ringed['itself'] = ringed;
    let deep: unknown = [];
    for (let level = 0; level < 20_000; level += 1) deep = [deep];
    for (const odd of [1n, ringed, deep, { ids: [1n] }, { ids: [ringed] }, { ids: [deep] }]) {
      expect((await ask('items.remove', odd)).outcome).toMatchObject({ error: { code: 'bad-input' } });
      expect((await ask(odd, {})).outcome).toMatchObject({ error: { code: 'unknown-call' } });
    }
  });

  it('says little of what goes on and on', async () => {
    const wide = Object.fromEntries(Array.from({ length: 500 }, (_, place) => [`field-${place}`, 0]));
    for (const given of [wide, 'x'.repeat(5000), { ids: 'x'.repeat(5000) }]) {
      const { outcome } = await ask('items.remove', given);
      expect(JSON.stringify(outcome).length).toBeLessThan(700);
    }
    const { outcome } = await ask('x'.repeat(5000), {});
    expect(JSON.stringify(outcome).length).toBeLessThan(200);
  });

  it('names the first thousand fields in error and counts the others', async () => {
    const { outcome } = await ask('items.remove', { ids: new Array<number>(5000).fill(0) });
    expect(outcome).toMatchObject({
      error: { message: 'ids.0: allowed is an id (and 4999 more).', fields: { length: 1000 } },
    });
  });

  it('passes on what a handler answers, good or bad', async () => {
    expect((await ask('items.list', {})).outcome).toEqual(success('items.list'));
    const refused = failure('not-found', 'Gone.');
    expect((await ask('tours.remove', { id: 'a' }, { 'tours.remove': () => refused })).outcome).toEqual(
      refused,
    );
  });

  it('reports a handler that throws and answers with no detail of it', async () => {
    const fault = new Error('secret path');
    const { outcome, faults } = await ask(
      'items.list',
      {},
      {
        'items.list': () => {
          throw fault;
        },
      },
    );
    expect(faults).toEqual([fault]);
    expect(outcome).toMatchObject({ ok: false, error: { code: 'internal' } });
    expect(JSON.stringify(outcome)).not.toContain('secret');
  });
});

/** Whatever stands where a part of an input is wanted. */
const nonsense: readonly unknown[] = [undefined, null, 0, NaN, '', 'x', true, [], [null], {}, { as: 'x' }];

describe('the contract', () => {
  it('says in plain words what is allowed, whatever is given', async () => {
    for (const name of callNames) {
      for (const part of nonsense) {
        const keys = ['id', ...Object.keys(contract[name].input.shape)];
        const input = Object.fromEntries(keys.map((key) => [key, part]));
        const { outcome } = await ask(name, input);
        if (outcome.ok) continue;
        for (const { allowed } of outcome.error.fields) {
          expect(allowed, `${name} given ${JSON.stringify(part)}`).not.toMatch(
            /invalid|expected|received|undefined/i,
          );
        }
      }
    }
  });

  it.each(Object.entries(itemKinds))('says what every field of a %s must be', (kind) => {
    const parsed = itemDraft.safeParse({ kind });
    expect(parsed.success).toBe(false);
    for (const { message } of parsed.error?.issues ?? [])
      expect(message).not.toMatch(/invalid|expected|received/i);
  });

  it('has an input schema for every call, and each refuses nonsense', () => {
    for (const name of callNames) {
      expect(contract[name].input.safeParse({ nonsense: true }).success).toBe(false);
    }
  });
});
