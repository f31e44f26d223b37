import type { BreakEvenMap, MapScenario } from '../../../shared-types/break-even.ts';
import type { Preferences } from '../../../shared-types/settings.ts';
import { breakEvenCells, type MappedScenario } from '../../model/judge/break-even-map.ts';
import { mapText } from '../../model/judge/break-even-text.ts';
import { mapBorders, mapFinding } from '../../model/judge/break-even-words.ts';
import type { MapPlan } from './map-grid.ts';
import type { MapSubject } from './map-subject.ts';
import { mapTour } from './map-tour.ts';

/** A map before it is ranked. */
export interface DrawnMap {
  readonly subject: MapSubject;
  readonly plan: MapPlan;
  readonly mapped: readonly MappedScenario[];
}

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** Ranks a drawn map under a rider's weights and limits, and says what it shows. */
export function writeMap({ subject, plan, mapped }: DrawnMap, preferences: Preferences): BreakEvenMap {
  const { ground, leg } = subject;
  const { tour, settings } = ground;
  const scenarios = subject.scenarios.map(({ id, label, method }, place): MapScenario => ({
    id,
    label,
    method,
    letter: letters.charAt(place),
  }));
  const cells = breakEvenCells(plan, mapped, preferences, settings.currency);
  const nameOf = (id: string): string => scenarios.find((each) => each.id === id)!.label;
  return {
    tourId: tour.id,
    leg,
    legLabel: tour.legs[leg]!.label,
    startDate: mapTour(tour, leg, 1).startDate,
    days: plan.days,
    gapsDays: plan.gapsDays,
    cells,
    scenarios,
    finding: mapFinding(cells, nameOf),
    borders: mapBorders(plan, cells, nameOf),
    text: mapText(plan, cells, scenarios),
    histories: plan.histories,
    stepMinutes: Number(plan.stepMinutes),
    confidence: settings.risk.confidence,
  };
}
