import { wattHours, wordsLocale } from '../../../shared-types/figures.ts';
import { shareOfLights, type StopSituation } from '../../../shared-types/stop-plan.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import { fullWh } from '../../model/judge/stop-plan/charge.ts';
import type { PlannedStop } from '../../model/judge/stop-plan/plan-stop.ts';
import { decimal, inPercent } from '../assemble/words.ts';
import type { StopKit } from './stop-kit.ts';
import { isOf } from './stored-now.ts';

/** What a stop was planned from. */
export interface StopGround {
  readonly asked: StopSituation;
  readonly tour: Tour;
  readonly kit: StopKit;
}

/** Why nothing is plugged in, what was taken as read, and how exact the plan is. */
export function stopNotes(ground: StopGround, planned: PlannedStop): readonly string[] {
  return [
    ...whyNothing(ground, planned),
    ...lightNotes(ground),
    ...useNotes(ground, planned),
    ...exactness(planned),
    ...leftOutNotes(planned),
  ];
}

function whyNothing({ kit, asked }: StopGround, { situation, lanes }: PlannedStop): readonly string[] {
  if (lanes.length > 0) return [];
  if (kit.chargers.length === 0)
    return [
      'The kit of this scenario has no wall charger, so nothing can be plugged in. Put one into the scenario.',
    ];
  if (asked.outlets === 0) return ['Without a free outlet nothing can be plugged in.'];
  const isFull = situation.stores.every((store) => store.storedWh >= fullWh(store));
  return [
    isFull
      ? 'All batteries and banks are full: there is nothing to plug in.'
      : 'Nothing here would gain by being plugged in.',
  ];
}

function lightNotes({ kit, asked }: StopGround): readonly string[] {
  return asked.states.flatMap((given) => {
    const piece = kit.pieces.find(isOf(given));
    if (given.state.as === 'share' || piece === undefined) return [];
    const { low, high } = shareOfLights(given.state.lit, piece.lights);
    const range = `${inPercent(low)} to ${inPercent(high)}`;
    const lit = `${given.state.lit} of ${piece.lights} lights lit`;
    return [
      `${piece.store.label} with ${lit} holds ${range}; the plan takes the middle, ${inPercent((low + high) / 2, 1)}.`,
    ];
  });
}

function useNotes({ asked, tour, kit }: StopGround, { situation }: PlannedStop): readonly string[] {
  const notes: string[] = [];
  if (asked.use.as === 'leg') {
    const needWh = situation.stores.reduce((sum, store) => sum + store.needWh, 0);
    notes.push(
      `Use until the next wall is that of a mean day of ${tour.legs[asked.use.leg]!.label}, for ${decimal(asked.hoursToWall, 1)} h: ` +
        `${wattHours(needWh, wordsLocale)} in all.`,
    );
  }
  if (kit.hasOtherSource) notes.push('What panel or hub will give on the way is not counted.');
  return notes;
}

function exactness({ lanes, slotMinutes, bestOfMinutes, finestMinutes }: PlannedStop): readonly string[] {
  if (lanes.length === 0) return [];
  const best = `of those that move plugs after whole slots of ${bestOfMinutes} min, none is better.`;
  if (bestOfMinutes === finestMinutes) return [`The plan was compared with all others: ${best}`];
  const finer = slotMinutes < bestOfMinutes ? ` This one has slots of ${slotMinutes} min.` : '';
  return [`There are too many plans with slots of ${finestMinutes} min to compare them all; ${best}${finer}`];
}

function leftOutNotes({ leftOut, isNarrowed, situation }: PlannedStop): readonly string[] {
  if (leftOut.length === 0)
    return isNarrowed
      ? ['There are too many ways to plug all in; those with the best free ports were compared.']
      : [];
  const labels = leftOut.map((place) => situation.stores[place]!.label).join(', ');
  return [`There are too many ways to plug all in; left out of the plan: ${labels}.`];
}
