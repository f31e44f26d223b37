import { failure, success, type Outcome } from '../../shared-types/outcome.ts';
import { carriedOver } from './carry-over.ts';
import type { EditStep, Place } from './edit-history.svelte.ts';
import { editWords } from './edit-words.ts';
import { addressOf, type Screen } from './route.svelte.ts';

export interface LabelledRow {
  readonly id: string;
  readonly label: string;
}

/** How the history stores and removes the rows of one list; it tells of failures itself. */
export interface RowStore<Row extends LabelledRow> {
  readonly list: 'items' | 'tours' | 'scenarios';
  find(id: string): Row | undefined;
  /** Replaces the rows of these ids, or puts them back: at this place of the list, where one is given. */
  put(rows: readonly Row[], place?: number): Promise<Outcome<unknown>>;
  remove(ids: readonly string[]): Promise<Outcome<unknown>>;
}

const screenOf: Readonly<Record<RowStore<LabelledRow>['list'], Screen>> = {
  items: 'inventory',
  tours: 'tours',
  scenarios: 'scenarios',
};

export function subjectOf(list: RowStore<LabelledRow>['list'], id: string): string {
  return `${list}/${id}`;
}

export function placeOf(list: RowStore<LabelledRow>['list'], { id, label }: LabelledRow): Place {
  return { words: `See ${label}`, address: addressOf(screenOf[list], id) };
}

export function listPlace(list: RowStore<LabelledRow>['list']): Place {
  const screen = screenOf[list];
  return { words: `See the ${screen}`, address: addressOf(screen) };
}

/** null when the two rows say the same. */
export function changeStep<Row extends LabelledRow>(
  store: RowStore<Row>,
  before: Row,
  after: Row,
): EditStep | null {
  const edit = editWords(store.list, before, after);
  if (edit === null) return null;
  return {
    ...edit,
    subject: subjectOf(store.list, after.id),
    undone: placeOf(store.list, before),
    redone: placeOf(store.list, after),
    undo: () => carry(store, after, before),
    redo: () => carry(store, before, after),
  };
}

export function additionStep<Row extends LabelledRow>(store: RowStore<Row>, row: Row): EditStep {
  return {
    words: `Added ${row.label}`,
    subject: subjectOf(store.list, row.id),
    undone: listPlace(store.list),
    redone: placeOf(store.list, row),
    field: null,
    undo: () => store.remove([row.id]),
    redo: () => store.put([row]),
  };
}

/** Several rows that came at once; `words` as in a step. */
export function additionsStep<Row extends LabelledRow>(
  store: RowStore<Row>,
  rows: readonly Row[],
  words: string,
): EditStep {
  return {
    words,
    subject: store.list,
    undone: listPlace(store.list),
    redone: listPlace(store.list),
    field: null,
    undo: () => store.remove(rows.map(({ id }) => id)),
    redo: () => store.put(rows),
  };
}

export function removalStep<Row extends LabelledRow>(
  store: RowStore<Row>,
  row: Row,
  place: number,
): EditStep {
  return {
    words: `Removed ${row.label}`,
    subject: subjectOf(store.list, row.id),
    undone: placeOf(store.list, row),
    redone: listPlace(store.list),
    field: null,
    undo: () => store.put([row], place),
    redo: () => store.remove([row.id]),
  };
}

/** Only what the change touched goes back; what else was changed in the row since stays. */
async function carry<Row extends LabelledRow>(
  store: RowStore<Row>,
  from: Row,
  to: Row,
): Promise<Outcome<unknown>> {
  const now = store.find(from.id);
  if (now === undefined) return failure('not-found', `${from.label} is not in the catalogue (any more).`);
  return store.put([carriedOver(now, from, to)]);
}

/** For a list whose calls take one row each; stops at the first that is refused. */
export async function oneByOne<Each>(
  all: readonly Each[],
  act: (each: Each) => Promise<Outcome<unknown>>,
): Promise<Outcome<unknown>> {
  for (const each of all) {
    const outcome = await act(each);
    if (!outcome.ok) return outcome;
  }
  return success(null);
}
