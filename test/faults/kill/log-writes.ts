import { demoSettings } from '../../../db/demo/demo.ts';
import type { ReadingDraft } from '../../../shared-types/reading.ts';
import { keyOf, settingsKey } from './stored-rows.ts';
import { idOfRow, type Write } from './writer.ts';

const mostReadings = 40;

const saveReading: Write = async ({ dice, ledger, host }) => {
  const keys = ledger.keysFrom(keyOf('readings', 'Read'));
  const key = keys.length >= mostReadings ? dice.oneOf(keys) : dice.oneOf([...keys, null, null, null]);
  const note = key === null ? ledger.newName('Read') : (ledger.draftOf(key) as ReadingDraft).note;
  const reading: ReadingDraft = {
    ...{ as: 'charge', itemId: 'demo-bank-20', on: '2026-05-03', note },
    state: { as: 'share', share: dice.count(100) / 100 },
  };
  const call = host.call('readings.save', key === null ? { reading } : { id: ledger.idOf(key), reading });
  await ledger.send(new Map([[keyOf('readings', note), reading]]), call, idOfRow);
};

const removeReading: Write = async ({ dice, ledger, host }) => {
  const keys = ledger.keysFrom(keyOf('readings', 'Read'));
  if (keys.length === 0) return;
  const key = dice.oneOf(keys);
  await ledger.send(new Map([[key, null]]), host.call('readings.remove', { id: ledger.idOf(key) }), () => []);
};

const saveSettings: Write = async ({ dice, ledger, host }) => {
  const settings = {
    ...demoSettings,
    theme: dice.oneOf(['light', 'dark', 'system'] as const),
    sky: { ...demoSettings.sky, histories: 20 + dice.count(80) },
  };
  await ledger.send(new Map([[settingsKey, settings]]), host.call('settings.save', { settings }), () => []);
};

export const logWrites: readonly Write[] = [
  saveReading,
  saveReading,
  saveReading,
  removeReading,
  saveSettings,
];
