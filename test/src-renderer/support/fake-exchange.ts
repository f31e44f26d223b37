import type { Handlers } from '../../../shared-types/contract.ts';
import type { ExchangeEntry, ExchangeList } from '../../../shared-types/exchange.ts';
import type { Item } from '../../../shared-types/item.ts';
import { failure, success } from '../../../shared-types/outcome.ts';
import type { Settings } from '../../../shared-types/settings.ts';
import type { Catalogue } from './fake-workbench.ts';

type ExchangeCalls = Pick<
  Handlers,
  'exchange.save' | 'exchange.preview' | 'exchange.take' | 'exchange.takeBack'
>;

/** A judged entry of a new item, or what a test wants otherwise. */
export function exchangeEntry(change: Partial<ExchangeEntry> = {}): ExchangeEntry {
  return {
    ...{ list: 'items', place: 0, kind: 'Cable or other', label: 'Strap', fate: 'new' },
    ...{ changes: [], reasons: [], more: 0, twin: null, needs: [] },
    ...change,
  };
}

/**
 * A fake file is a line an entry: `items Strap`, `scenarios Coast needs 0` (the item at that place), `items Anvil refused`,
 * `settings`, which weigh the margin at 0.05. Only items and settings are really stored. The file `broken` can't be read.
 */
export function fakeExchange(held: Catalogue, fresh: () => string): ExchangeCalls {
  const read = (text: string): readonly ExchangeEntry[] => {
    const places = new Map<string, number>();
    return text.split('\n').map((line) => {
      const [list = '', label = 'Settings', word = '', need = ''] = line.split(' ');
      const place = places.get(list) ?? 0;
      places.set(list, place + 1);
      return exchangeEntry({
        ...{ list: list as ExchangeList, place, label },
        fate: word === 'refused' || word === 'same' ? word : 'new',
        needs: word === 'needs' ? [{ list: 'items', place: Number(need) }] : [],
      });
    });
  };
  return {
    'exchange.save': () => success({ as: 'saved', path: 'a folder/catalogue.json' }),
    'exchange.preview': ({ text }) =>
      text === 'broken'
        ? failure('unreadable', 'The file ends in the middle.')
        : success({ madeOn: '2027-04-18', program: '0.1.0', entries: read(text) }),
    'exchange.take': ({ text, leaveOut, passOverRefused, settings }) => {
      const entries = read(text);
      const refused = entries.filter(({ fate }) => fate === 'refused');
      if (refused.length > 0 && !passOverRefused)
        return success({ added: 0, changed: 0, refused, former: null });
      const taken = entries.filter(
        ({ fate, list, place }) =>
          fate === 'new' &&
          (list === 'settings'
            ? settings
            : !leaveOut.some((out) => out.list === list && out.place === place)),
      );
      const [item] = held.items;
      const added = taken
        .filter(({ list }) => list === 'items')
        .map(({ label }): Item => ({ ...item!, label, id: fresh() }));
      held.items.push(...added);
      if (taken.some(({ list }) => list === 'settings')) held.settings = otherWeights(held.settings);
      const none = { tours: [], scenarios: [], readings: [], estimates: [] };
      const former = { text: '', added: { ...none, items: added.map(({ id }) => id) } };
      return success({ added: taken.length, changed: 0, refused, former });
    },
    'exchange.takeBack': ({ added }) => {
      held.items = held.items.filter(({ id }) => !added.items.includes(id));
      return success({ putBack: 0 });
    },
  };
}

function otherWeights({ preferences, ...rest }: Settings): Settings {
  return { ...rest, preferences: { ...preferences, margin: { ...preferences.margin, weight: 0.05 } } };
}
