import { demoScenarios, demoTours } from '../../../db/demo/demo.ts';
import type { ScenarioDraft } from '../../../shared-types/scenario.ts';
import type { TourDraft } from '../../../shared-types/tour.ts';
import { keyOf, type RowList } from './stored-rows.ts';
import { idOfRow, withoutId, type Write, type Writer } from './writer.ts';

const mostTours = 10;
const mostScenarios = 20;

/** The key of a row of this writer to change, or null to add one. */
function someRow({ ledger, dice }: Writer, list: RowList, name: string, most: number): string | null {
  const keys = ledger.keysFrom(keyOf(list, name));
  return keys.length >= most ? dice.oneOf(keys) : dice.oneOf([...keys, null]);
}

const saveTour: Write = async (writer) => {
  const { dice, ledger, host } = writer;
  const key = someRow(writer, 'tours', 'Road', mostTours);
  const { legs, ...rest } = withoutId(demoTours[0]!);
  const label = key === null ? ledger.newName('Road') : (ledger.draftOf(key) as TourDraft).label;
  const tour: TourDraft = {
    ...{ ...rest, label, riderW: 60 + dice.count(100) },
    // A tour of many rows is where a save could tear.
    legs: Array.from({ length: 1 + dice.count(6) }, () => dice.oneOf(legs)),
  };
  const call = host.call('tours.save', key === null ? { tour } : { id: ledger.idOf(key), tour });
  await ledger.send(new Map([[keyOf('tours', label), tour]]), call, idOfRow);
};

const removeTour: Write = async ({ dice, ledger, host }) => {
  const keys = ledger.keysFrom(keyOf('tours', 'Road'));
  if (keys.length === 0) return;
  const key = dice.oneOf(keys);
  await ledger.send(new Map([[key, null]]), host.call('tours.remove', { id: ledger.idOf(key) }), () => []);
};

const saveScenario: Write = async (writer) => {
  const { dice, ledger, host } = writer;
  const key = someRow(writer, 'scenarios', 'Kit', mostScenarios);
  const like = withoutId(dice.oneOf(demoScenarios));
  const label = key === null ? ledger.newName('Kit') : (ledger.draftOf(key) as ScenarioDraft).label;
  const scenario: ScenarioDraft = { ...like, label, notes: `Packed ${dice.count(1e6)}` };
  const call = host.call('scenarios.save', key === null ? { scenario } : { id: ledger.idOf(key), scenario });
  await ledger.send(new Map([[keyOf('scenarios', label), scenario]]), call, idOfRow);
};

const removeScenario: Write = async ({ dice, ledger, host }) => {
  const keys = ledger.keysFrom(keyOf('scenarios', 'Kit'));
  if (keys.length === 0) return;
  const key = dice.oneOf(keys);
  const call = host.call('scenarios.remove', { id: ledger.idOf(key) });
  await ledger.send(new Map([[key, null]]), call, () => []);
};

export const roadWrites: readonly Write[] = [
  ...[saveTour, saveTour, saveTour, removeTour],
  ...[saveScenario, saveScenario, removeScenario],
];
