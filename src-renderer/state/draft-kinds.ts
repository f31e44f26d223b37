import { z } from 'zod';
import { itemDraft } from '../../shared-types/item.ts';
import { ownStart, type OwnStart } from '../../shared-types/own-start.ts';
import { readingDraft } from '../../shared-types/reading.ts';
import { scenarioDraft } from '../../shared-types/scenario.ts';
import { preferences, settings } from '../../shared-types/settings.ts';
import { tourDraft } from '../../shared-types/tour.ts';
import type { AppState } from './app-state.svelte.ts';
import type { DraftOf } from './draft-of.ts';
import type { Form } from './form.svelte.ts';
import type { KeptForms } from './kept-forms.ts';
import type { NewForm } from './new-form.svelte.ts';
import type { Screen } from './route.svelte.ts';

/** What a form is to whoever keeps its draft. */
export type DraftForm<Draft> = Pick<Form<Draft>, 'unstored' | 'putBack'>;

/** The forms of one kind of draft, each by an id of its own. */
export interface DraftKind<Draft> {
  readonly screen: Screen;
  readonly schema: z.ZodType;
  /** Reads what the forms are of, where the start does not; false where it could not be read. */
  load?(): Promise<boolean>;
  /** The forms begun, of what is still there. */
  begun(): readonly (readonly [id: string, form: DraftForm<Draft>])[];
  /** The form of this id, with `stored` to begin with where it is of something new; null where what it is of is gone. */
  formOf(id: string, stored: Draft): DraftForm<Draft> | null;
}

export type DraftKinds = Readonly<Record<string, DraftKind<unknown>>>;

/** Every form of the app whose draft a rider would miss. */
export function draftKindsOf(app: AppState): DraftKinds {
  const { inventory, tours, scenarios, fieldLog } = app;
  const readings = ofRows('field-log', readingDraft, fieldLog.forms, (id) => fieldLog.find(id));
  return {
    items: ofRows('inventory', itemDraft, inventory.forms, (id) => inventory.rows.find(id)),
    tours: ofRows('tours', tourDraft, tours.forms, (id) => tours.rows.find(id)),
    scenarios: ofRows('scenarios', scenarioDraft, scenarios.forms, (id) => scenarios.rows.find(id)),
    readings: {
      ...readings,
      load: () => fieldLog.load(),
      formOf: (id) => {
        fieldLog.editedId = id;
        return readings.formOf(id);
      },
    },
    'new-item': ofNew('inventory', itemDraft, inventory.newItem),
    csv: ofOne('inventory', z.string(), () => inventory.csv),
    'new-reading': ofNew('field-log', readingDraft, fieldLog.newReading),
    'own-start': ofWay(app.ownStart),
    settings: ofOne('about', generalSettings, () => app.settings.form),
    preferences: ofOne('trade-offs', preferences, () => app.knobs),
  };
}

const generalSettings = settings.omit({ tourId: true, preferences: true });

function ofRows<Row extends { readonly id: string }>(
  screen: Screen,
  schema: z.ZodType,
  forms: KeptForms<Row>,
  find: (id: string) => Row | undefined,
) {
  return {
    screen,
    schema,
    begun: () => forms.begun.filter(([id]) => find(id) !== undefined),
    formOf: (id: string) => {
      const row = find(id);
      return row === undefined ? null : forms.of(row);
    },
  } satisfies DraftKind<DraftOf<Row>>;
}

function ofNew<Draft>(screen: Screen, schema: z.ZodType, form: NewForm<Draft>): DraftKind<Draft> {
  return { screen, schema, begun: () => named('', form.begun), formOf: (_, stored) => form.of(stored) };
}

function ofOne<Draft>(
  screen: Screen,
  schema: z.ZodType,
  form: () => DraftForm<Draft> | null,
): DraftKind<Draft> {
  return { screen, schema, begun: () => named('', form()), formOf: form };
}

/** The id is the step that the rider has come to. */
function ofWay(start: AppState['ownStart']): DraftKind<OwnStart> {
  return {
    screen: 'start',
    schema: ownStart,
    begun: () => named(String(start.step), start.begun),
    formOf: (step, stored) => start.begin(Number(step), stored),
  };
}

function named<Draft>(
  id: string,
  form: DraftForm<Draft> | null,
): readonly (readonly [string, DraftForm<Draft>])[] {
  return form === null ? [] : [[id, form]];
}
