import { randomUUID } from 'node:crypto';
import { demoItems, demoTours } from '../../../db/demo/demo.ts';
import { itemDraft, type ItemDraft } from '../../../shared-types/item.ts';
import { itemState } from '../../../shared-types/item-common.ts';
import { writeItemCsv } from '../../../src-main/catalogue/csv/write-items.ts';
import { catalogueFileText } from '../../../src-main/catalogue/exchange/file-text.ts';
import type { Ledger } from './ledger.ts';
import { keyOf } from './stored-rows.ts';
import { idOfRow, idsOfRows, withoutId, type Write, type Writer } from './writer.ts';

/** Beyond these some are removed, or the lists that are compared after each kill would grow for ever. */
const mostThings = 60;
const linesAtOnce = 30;
const removedAtOnce = 25;
const entriesAtOnce = 5;

const ownKeys = (ledger: Ledger): readonly string[] => ledger.keysFrom(keyOf('items', 'Thing'));

function newThing({ dice, ledger }: Writer): ItemDraft {
  const like = withoutId(dice.oneOf(demoItems));
  return itemDraft.parse({ ...like, label: ledger.newName('Thing'), massG: dice.count(2000) });
}

function newThings(writer: Writer, most: number): readonly ItemDraft[] {
  return Array.from({ length: 1 + writer.dice.count(most) }, () => newThing(writer));
}

function keyed(drafts: readonly ItemDraft[]): Map<string, unknown> {
  return new Map(drafts.map((draft) => [keyOf('items', draft.label), draft]));
}

const add: Write = (writer) => {
  const item = newThing(writer);
  return writer.ledger.send(keyed([item]), writer.host.call('items.save', { item }), idOfRow);
};

const change: Write = async ({ dice, ledger, host }) => {
  const key = dice.oneOf([...ownKeys(ledger), null]);
  if (key === null) return;
  const item = itemDraft.parse({
    ...(ledger.draftOf(key) as ItemDraft),
    notes: `Weighed ${dice.count(1e6)}`,
  });
  await ledger.send(keyed([item]), host.call('items.save', { id: ledger.idOf(key), item }), idOfRow);
};

const move: Write = async ({ dice, ledger, host }) => {
  const keys = dice.someOf(ownKeys(ledger), entriesAtOnce);
  if (keys.length === 0) return;
  const state = dice.oneOf(itemState.options);
  const moved = keys.map((key) => ({ ...(ledger.draftOf(key) as ItemDraft), state }));
  const changes = keys.map((key) => ({ id: ledger.idOf(key), state }));
  await ledger.send(keyed(moved), host.call('items.setStates', { changes }), idsOfRows);
};

/** Removes some where there are many, and puts some of them back. */
const remove: Write = async ({ dice, ledger, host }) => {
  const all = ownKeys(ledger);
  if (all.length < mostThings) return;
  const keys = dice.someOf(all, removedAtOnce);
  const items = keys.map((key) => ({ id: ledger.idOf(key), item: ledger.draftOf(key) as ItemDraft }));
  const gone = new Map(keys.map((key) => [key, null]));
  const ids = items.map(({ id }) => id);
  await ledger.send(gone, host.call('items.remove', { ids }), () => []);
  const back = items.slice(0, entriesAtOnce);
  const put = keyed(back.map(({ item }) => item));
  await ledger.send(put, host.call('items.putBack', { items: back }), idsOfRows);
};

const addCsv: Write = (writer) => {
  const drafts = newThings(writer, linesAtOnce);
  const text = writeItemCsv(drafts, 'EUR');
  const call = writer.host.call('items.addCsv', { text, leaveOut: [], passOverErrors: false });
  return writer.ledger.send(keyed(drafts), call, ({ added }) => idsOfRows(added));
};

/** Takes in a catalogue's file, which is copied first, and takes that back. */
const exchange: Write = async (writer) => {
  const { ledger, host } = writer;
  const items = newThings(writer, entriesAtOnce).map((draft) => ({ ...draft, id: randomUUID() }));
  const tour = { ...demoTours[0]!, id: randomUUID(), label: ledger.newName('Taken') };
  const content = { items, tours: [tour], scenarios: [], readings: [], estimates: [], settings: null };
  const text = catalogueFileText(content, { madeOn: '2027-01-01', program: '0.0.0' });
  const taken = keyed(items.map((item) => itemDraft.parse(withoutId(item))));
  taken.set(keyOf('tours', tour.label), withoutId(tour));
  const choice = { leaveOut: [], passOverRefused: false, settings: false };
  const { former } = await ledger.send(taken, host.call('exchange.take', { text, ...choice }), () =>
    idsOfRows([...items, tour]),
  );
  if (former === null) throw new Error('A new file was taken, and nothing was stored.');
  const gone = new Map([...taken.keys()].map((key) => [key, null]));
  await ledger.send(gone, host.call('exchange.takeBack', former), () => []);
};

/** What is done more often stands here more often. */
export const thingsWrites: readonly Write[] = [
  ...[add, add, add, add, change, change, change, change],
  ...[move, move, remove, addCsv, exchange],
];
