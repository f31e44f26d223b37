import { failure, success, type Outcome } from '../../../shared-types/outcome.ts';
import type { StopSituation } from '../../../shared-types/stop-plan.ts';
import type { Tour } from '../../../shared-types/tour.ts';
import { meanUseWhPerDay } from '../../model/flow/planned-use.ts';
import { timelineOf } from '../assemble/tour.ts';
import { isOf, unknownPiece } from './stored-now.ts';
import type { Piece } from './stop-kit.ts';

const hoursADay = 24;

/**
 * What each piece is asked for until the next expected wall, Wh at its batteries, in the order of the pieces; 0 for banks. By a
 * leg it is the use of a mean day, for as many hours: at what time of the day the rider stops is not known.
 */
export function comingNeedWh(
  pieces: readonly Piece[],
  tour: Tour,
  { use, hoursToWall }: Pick<StopSituation, 'use' | 'hoursToWall'>,
  stepMinutes: number,
): Outcome<readonly number[]> {
  if (use.as === 'own') return ownNeed(pieces, use.needs);
  const leg = tour.legs[use.leg];
  if (leg === undefined)
    return failure('not-found', `That tour has no leg ${use.leg + 1}: it has ${tour.legs.length}.`);
  const timeline = timelineOf({ legs: [{ ...leg, days: 1 }] }, stepMinutes);
  return success(
    pieces.map(({ device }) =>
      device === null ? 0 : (meanUseWhPerDay([device], timeline) / hoursADay) * hoursToWall,
    ),
  );
}

type OwnNeeds = Extract<StopSituation['use'], { as: 'own' }>['needs'];

function ownNeed(pieces: readonly Piece[], needs: OwnNeeds): Outcome<readonly number[]> {
  const devices = pieces.filter(({ device }) => device !== null);
  const faults = needs.flatMap((need, place) =>
    devices.some(isOf(need)) ? [] : [unknownPiece(`use.needs.${place}.itemId`, need)],
  );
  if (faults.length > 0)
    return failure('bad-input', 'Use can only be given for devices that come along.', faults);
  return success(pieces.map((piece) => needs.find(isOf(piece))?.needWh ?? 0));
}
