import { dateText, countText, whText } from '../format.ts';
import { program, reserveReminder, sheetTitle, type SheetMatter } from '../matter.ts';
import { airSection } from './air.ts';
import type { SheetContent } from './content.ts';
import { costSection } from './costs.ts';
import { energySection, storedSection } from './energy.ts';
import { assumptionSection, cautionSection } from './grounds.ts';
import { packingSection } from './packing.ts';
import { roadSection } from './road.ts';
import { scorecardSection } from './scorecard.ts';
import { stopSection } from './stops.ts';
import { swingsSection } from './swings.ts';

/** The whole sheet: what to decide by first, then what to do and carry, then what it rests on; no clock, so that the same input says the same. */
export function sheetContent(matter: SheetMatter): SheetContent {
  const { comparison, stamp } = matter;
  const { tour, histories, advice } = comparison;
  const use = `Use ${whText(tour.demandWhPerDay)}\u00a0Wh a day; ${countText(histories, 'history', 'histories')}.`;
  return {
    title: sheetTitle(comparison),
    tour: `${tour.summary}. ${use}`,
    answer: advice.answer,
    why: advice.why,
    notes: advice.notes,
    sections: [
      scorecardSection(matter),
      storedSection(comparison),
      swingsSection(matter),
      energySection(comparison),
      costSection(comparison),
      packingSection(comparison),
      stopSection(comparison),
      cautionSection(comparison),
      airSection(comparison),
      roadSection(comparison),
      assumptionSection(comparison),
    ],
    reminder: reserveReminder,
    made: `${program} ${stamp.version}, made on ${dateText(stamp.madeOn)}`,
  };
}
