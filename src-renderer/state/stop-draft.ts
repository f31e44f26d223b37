import { badInput, failure, type FieldError, type Outcome, success } from '../../shared-types/outcome.ts';
import {
  furthestWallH,
  stopSituation,
  type StopSituation,
  type StoreState,
} from '../../shared-types/stop-plan.ts';
import { nightOf, type Leg } from '../../shared-types/tour.ts';
import type { StopPiece } from './stop-pieces.ts';

/** A stop as the rider fills it in; what is kept by piece stays when another tour or scenario is looked at. */
export interface StopDraft {
  readonly minutes: number;
  readonly outlets: number;
  readonly hoursToWall: number;
  readonly useAs: StopSituation['use']['as'];
  readonly leg: number;
  /** By the key of the piece: 0..1, or lights lit. */
  readonly share: Readonly<Record<string, number>>;
  readonly lit: Readonly<Record<string, number>>;
  /** Wh, by the key of the piece. */
  readonly needWh: Readonly<Record<string, number>>;
}

const usualMinutes = 60;
const usualOutlets = 1;
/** From a stop about noon to the wall of the evening, h (our choice). */
const toEveningH = 6;
const hoursADay = 24;
/** What a piece holds until the rider says otherwise: half. */
const usualShare = 0.5;

/** A stop on a leg: one of its day stops, or one of the usual length where it has none with an outlet. */
export function stopOnLeg(
  leg: Leg | undefined,
  place: number,
  stop = leg?.dayStops.findIndex(({ outlets }) => outlets > 0) ?? -1,
): Pick<StopDraft, 'minutes' | 'outlets' | 'hoursToWall' | 'leg'> {
  const { minutes, outlets } = leg?.dayStops[stop] ?? { minutes: usualMinutes, outlets: usualOutlets };
  const hoursToWall = Math.min(furthestWallH, toEveningH + hoursADay * nightsWithoutWall(leg));
  return { minutes, outlets, leg: place, hoursToWall };
}

/** The most nights in a row without a wall on a leg. */
function nightsWithoutWall(leg: Leg | undefined): number {
  if (leg === undefined) return 0;
  let [longest, now] = [0, 0];
  for (let night = 0; night < leg.days; night += 1) {
    now = nightOf(leg.nights, night) === 'none' ? now + 1 : 0;
    longest = Math.max(longest, now);
  }
  return longest;
}

export function startingDraft(leg: Leg | undefined): StopDraft {
  return { ...stopOnLeg(leg, 0), useAs: 'leg', share: {}, lit: {}, needWh: {} };
}

export function shareOf({ share }: StopDraft, { key }: StopPiece): number {
  return share[key] ?? usualShare;
}

export function litOf({ lit }: StopDraft, { key, lights }: StopPiece): number {
  return lit[key] ?? Math.ceil(lights / 2);
}

/** The question that a draft asks, or which of its fields can't be; paths are those of the draft. */
export function situationOf(
  draft: StopDraft,
  pieces: readonly StopPiece[],
  ids: Pick<StopSituation, 'tourId' | 'scenarioId'>,
): Outcome<StopSituation> {
  const storing = pieces.filter(({ stores }) => stores);
  const devices = pieces.filter(({ role }) => role !== 'bank');
  const { minutes, outlets, hoursToWall } = draft;
  const asked: StopSituation = {
    ...ids,
    minutes,
    outlets,
    hoursToWall,
    states: storing.map((piece) => ({ ...nameOf(piece), state: stateOf(draft, piece) })),
    use:
      draft.useAs === 'leg'
        ? { as: 'leg', leg: draft.leg }
        : {
            as: 'own',
            needs: devices.map((piece) => ({ ...nameOf(piece), needWh: draft.needWh[piece.key] ?? 0 })),
          },
  };
  const parsed = stopSituation.safeParse(asked);
  if (parsed.success) return tooManyLit(draft, storing) ?? success(parsed.data);
  const refused = badInput(parsed.error, asked);
  const fields = refused.error.fields.map((field) => ({
    ...field,
    path: draftPath(field, storing, devices),
  }));
  return { ok: false, error: { ...refused.error, fields } };
}

/** What the schema can't see: how many lights each store has. */
function tooManyLit(draft: StopDraft, storing: readonly StopPiece[]): Outcome<never> | null {
  const over = storing.filter((piece) => piece.lights > 0 && litOf(draft, piece) > piece.lights);
  if (over.length === 0) return null;
  return failure(
    'bad-input',
    'More lights are lit than there are.',
    over.map((piece) => ({
      path: `lit.${piece.key}`,
      allowed: `0 to ${piece.lights}`,
      got: String(litOf(draft, piece)),
    })),
  );
}

const nameOf = ({ itemId, copy }: StopPiece) => ({ itemId, copy });

function stateOf(draft: StopDraft, piece: StopPiece): StoreState {
  return piece.lights > 0
    ? { as: 'lights', lit: litOf(draft, piece) }
    : { as: 'share', share: shareOf(draft, piece) };
}

/** `states.2.state.share` is `share.KEY` in a draft, `use.needs.1.needWh` is `needWh.KEY`. */
function draftPath(
  { path }: FieldError,
  storing: readonly StopPiece[],
  devices: readonly StopPiece[],
): string {
  const [list, ...rest] = path.split('.');
  const field = rest.at(-1) ?? '';
  if (list === 'states') return `${field}.${storing[Number(rest[0])]?.key ?? ''}`;
  if (list === 'use') return `${field}.${devices[Number(rest[1])]?.key ?? ''}`;
  return path;
}
