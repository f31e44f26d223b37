import type { Handlers } from '../../../shared-types/contract.ts';
import { failure, success } from '../../../shared-types/outcome.ts';
import { readyMadeScenarios } from '../../../shared-types/ready-made.ts';
import { demoTours } from '../../../db/demo/demo.ts';
import { isOfDemo } from '../../../shared-types/demo-ids.ts';
import type { Catalogue } from './fake-workbench.ts';

/** What lays several rows at once, over a catalogue in memory; a tour labelled 'Refused' is refused. */
export function fakeStart(
  held: Catalogue,
  fresh: () => string,
): Pick<Handlers, 'start.own' | 'start.demo' | 'scenarios.addReadyMade'> {
  const addMethods = (): readonly string[] => {
    const added = readyMadeScenarios(held.items).flatMap((made) =>
      'draft' in made ? [{ ...made.draft, id: fresh() }] : [],
    );
    held.scenarios.push(...added);
    return added.map(({ id }) => id);
  };
  return {
    'start.own': ({ own }) => {
      if (own.tour.label === 'Refused')
        return failure('bad-input', 'No.', [{ path: 'own.tour.label', allowed: 'another', got: '' }]);
      if (own.putDemoAway) {
        held.tours = held.tours.filter((tour) => !isOfDemo(tour));
        held.scenarios = held.scenarios.filter((scenario) => !isOfDemo(scenario));
        held.items = held.items.map((item) => (isOfDemo(item) ? { ...item, state: 'retired' } : item));
      }
      held.items.push(...own.items.map((item) => ({ ...item, id: fresh() })));
      const tourId = fresh();
      held.tours.push({ ...own.tour, id: tourId });
      addMethods();
      held.settings = { ...held.settings, tourId };
      return success({ tourId });
    },
    'start.demo': () => {
      held.tours.push(...demoTours);
      held.settings = { ...held.settings, tourId: demoTours[0]!.id };
      return success({ tourId: demoTours[0]!.id });
    },
    'scenarios.addReadyMade': () => success({ added: addMethods() }),
  };
}
