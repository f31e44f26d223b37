import type { Handlers } from '../../../shared-types/contract.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { putItemsBack, removeItems } from '../../catalogue/item-removal.ts';
import { listItems, saveItem, setItemState, setItemStates } from '../../catalogue/items.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { listScenarios, removeScenario, saveScenario } from '../../catalogue/scenarios.ts';
import { saveSettings } from '../../catalogue/settings.ts';
import { readStations } from '../../catalogue/stations.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import { listTours, removeTour, saveTour } from '../../catalogue/tours.ts';
import { longestSunshineH } from '../longest-sunshine.ts';
import { settingsOf } from '../settings-of.ts';
import { tourFaults } from '../tour-faults.ts';

type CatalogueCalls = Pick<
  Handlers,
  | 'items.list'
  | 'items.save'
  | 'items.setState'
  | 'items.remove'
  | 'items.putBack'
  | 'items.setStates'
  | 'tours.list'
  | 'tours.save'
  | 'tours.remove'
  | 'scenarios.list'
  | 'scenarios.save'
  | 'scenarios.remove'
  | 'settings.get'
  | 'settings.save'
  | 'stations.list'
>;

/** The calls that keep what the rider has, where they go and what they take. */
export function catalogueCalls({ read, write }: OpenedCatalogue): CatalogueCalls {
  const stations = () => readStations(longestSunshineH);
  const listed = <T>(list: () => T): Outcome<T> => withStorageOutcome(() => success(list()));
  return {
    'items.list': () => listed(() => listItems(read)),
    'items.save': ({ id, item }) => listed(() => saveItem(write, item, id)),
    'items.setState': ({ id, state }) =>
      withStorageOutcome(() => found(setItemState(write, id, state), 'item')),
    'items.remove': ({ ids }) => withStorageOutcome(() => removeItems(write, ids)),
    'items.putBack': ({ items }) => listed(() => putItemsBack(write, items)),
    'items.setStates': ({ changes }) =>
      withStorageOutcome(() => found(setItemStates(write, changes), 'item')),
    'tours.list': () => listed(() => listTours(read)),
    'tours.save': ({ id, tour }) =>
      withStorageOutcome(() => tourFaults(tour, stations()) ?? saveTour(write, tour, id)),
    'tours.remove': ({ id }) => withStorageOutcome(() => found(removeTour(write, id), 'tour')),
    'scenarios.list': () => listed(() => listScenarios(read)),
    'scenarios.save': ({ id, scenario }) => withStorageOutcome(() => saveScenario(write, scenario, id)),
    'scenarios.remove': ({ id }) => withStorageOutcome(() => found(removeScenario(write, id), 'scenario')),
    'settings.get': () => listed(() => settingsOf(read)),
    'settings.save': ({ settings }) => withStorageOutcome(() => saveSettings(write, settings)),
    'stations.list': () => success(stations()),
  };
}

function found<T>(row: T | null, what: string): Outcome<T> {
  return row === null
    ? failure('not-found', `That ${what} is not in the catalogue (any more).`)
    : success(row);
}
