import { todayFrom } from '../../../shared-types/dates.ts';
import type { OnTour, OnTourQuestion } from '../../../shared-types/field-log.ts';
import type { Handlers } from '../../../shared-types/contract.ts';
import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import { findItem, listItems } from '../../catalogue/items.ts';
import type { OpenedCatalogue } from '../../catalogue/open.ts';
import { listReadings, removeReading, saveReading } from '../../catalogue/readings.ts';
import { findScenario } from '../../catalogue/scenarios.ts';
import { readStations } from '../../catalogue/stations.ts';
import { withStorageOutcome } from '../../catalogue/storage-error.ts';
import { findTour } from '../../catalogue/tours.ts';
import { fieldLog } from '../field-log/field-log.ts';
import { onTour } from '../field-log/on-tour.ts';
import { readingFaults } from '../field-log/reading-faults.ts';
import { storeEstimate } from '../field-log/store-estimate.ts';
import { longestSunshineH } from '../longest-sunshine.ts';
import { settingsOf } from '../settings-of.ts';

type ReadingCalls = Pick<
  Handlers,
  'readings.log' | 'readings.save' | 'readings.remove' | 'readings.store' | 'readings.onTour'
>;

const minutesAnHour = 60;

/** The calls of the field log; `now` is the rider's clock. */
export function readingCalls(catalogue: OpenedCatalogue, now: () => Date): ReadingCalls {
  const { read, write } = catalogue;
  const today = (): string => todayFrom(now());
  return {
    'readings.log': () => withStorageOutcome(() => success(fieldLog(read, today()))),
    'readings.save': ({ id, reading }) =>
      withStorageOutcome(() => {
        const item = findItem(read, reading.itemId);
        const faults = item === null ? null : readingFaults(reading, item, today());
        return faults ?? saveReading(write, reading, id);
      }),
    'readings.remove': ({ id }) =>
      withStorageOutcome(() => {
        const reading = removeReading(write, id);
        return reading === null
          ? failure('not-found', 'That reading is not in the catalogue (any more).')
          : success(reading);
      }),
    'readings.store': ({ itemId, measure }) =>
      withStorageOutcome(() => storeEstimate(write, itemId, measure, today())),
    'readings.onTour': (asked) => withStorageOutcome(() => answerOnTour(catalogue, asked, now())),
  };
}

function answerOnTour(catalogue: OpenedCatalogue, asked: OnTourQuestion, now: Date): Outcome<OnTour> {
  const scenario = findScenario(catalogue.read, asked.scenarioId);
  if (scenario === null) return failure('not-found', 'That scenario is not in the catalogue (any more).');
  const tour = findTour(catalogue.read, asked.tourId);
  if (tour === null) return failure('not-found', 'That tour is not in the catalogue (any more).');
  return onTour(asked, {
    ground: {
      tour,
      stations: readStations(longestSunshineH),
      items: listItems(catalogue.read),
      settings: settingsOf(catalogue.read),
    },
    scenario,
    readings: listReadings(catalogue.read),
    today: todayFrom(now),
    hour: now.getHours() + now.getMinutes() / minutesAnHour,
  });
}
