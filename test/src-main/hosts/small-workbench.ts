import { callNames, type Handlers } from '../../../shared-types/contract.ts';
import type { Item } from '../../../shared-types/item.ts';
import { failure, success } from '../../../shared-types/outcome.ts';
import type { Workbench } from '../../../src-main/workbench/open.ts';

/** A workbench that keeps items in memory: enough to see what a host lets through and what it stores. */
export interface SmallWorkbench extends Workbench {
  readonly items: readonly Item[];
  readonly closed: boolean;
}

function refuseAll(): Handlers {
  const refuse = () => failure('not-found', 'This small workbench does not do that.');
  return Object.fromEntries(callNames.map((name) => [name, refuse])) as unknown as Handlers;
}

export function smallWorkbench(): SmallWorkbench {
  const items: Item[] = [];
  let closed = false;
  return {
    items,
    get closed() {
      return closed;
    },
    close: () => void (closed = true),
    handlers: {
      ...refuseAll(),
      'items.list': () => success(items),
      'items.save': ({ item }) => {
        const stored = { ...item, id: `item-${items.length + 1}` };
        items.push(stored);
        return success(stored);
      },
      'stations.list': () => {
        throw new Error('the climate table is broken');
      },
    },
  };
}
