import { failure, success, type FieldError, type Outcome } from '../../../shared-types/outcome.ts';
import { shareOfLights, type StopSituation, type StoreState } from '../../../shared-types/stop-plan.ts';
import type { Piece } from './stop-kit.ts';

type GivenStates = StopSituation['states'];

/** What each piece holds as the rider stops, Wh, in the order of the pieces; or which states can't be. */
export function storedNow(pieces: readonly Piece[], states: GivenStates): Outcome<readonly number[]> {
  const faults = [...faultsOf(pieces, states), ...missingFrom(pieces, states)];
  const [first] = faults;
  if (first !== undefined)
    return failure(
      'bad-input',
      `${first.path}: allowed is ${first.allowed}; given was ${first.got}.`,
      faults,
    );
  return success(
    pieces.map((piece) => {
      const given = states.find(isOf(piece));
      return given === undefined ? 0 : shareNow(piece, given.state) * piece.store.capacityWh;
    }),
  );
}

interface PieceName {
  readonly itemId: string;
  readonly copy: number;
}

export function isOf({ itemId, copy }: PieceName): (other: PieceName) => boolean {
  return (other) => other.itemId === itemId && other.copy === copy;
}

/** Lights tell a range: its middle is taken. */
function shareNow({ lights }: Piece, state: StoreState): number {
  if (state.as === 'share') return state.share;
  const { low, high } = shareOfLights(state.lit, lights);
  return (low + high) / 2;
}

function faultsOf(pieces: readonly Piece[], states: GivenStates): readonly FieldError[] {
  return states.flatMap((given, place) => {
    const piece = pieces.find(isOf(given));
    if (piece === undefined) return [unknownPiece(`states.${place}.itemId`, given)];
    if (states.findIndex(isOf(given)) !== place)
      return [{ path: `states.${place}`, allowed: 'each device and bank once', got: piece.store.label }];
    return given.state.as === 'lights' ? lightFaults(`states.${place}.state`, piece, given.state.lit) : [];
  });
}

export function unknownPiece(path: string, { itemId, copy }: PieceName): FieldError {
  return {
    path,
    allowed: 'a device of the tour or a bank of the scenario, and the number of one that is carried',
    got: `${itemId}, piece ${copy + 1}`,
  };
}

function lightFaults(path: string, { lights, store }: Piece, lit: number): readonly FieldError[] {
  if (lights === 0)
    return [{ path, allowed: `a share: ${store.label} has no lights`, got: `${lit} lights lit` }];
  return lit <= lights
    ? []
    : [{ path: `${path}.lit`, allowed: `0 to ${lights}, the lights of ${store.label}`, got: String(lit) }];
}

/** A direct load stores nothing, so nothing is asked of it. */
function missingFrom(pieces: readonly Piece[], states: GivenStates): readonly FieldError[] {
  return pieces
    .filter((piece) => piece.store.capacityWh > 0 && !states.some(isOf(piece)))
    .map(({ store }) => ({
      path: 'states',
      allowed: 'a state for every device and bank that comes along',
      got: `none for ${store.label}`,
    }));
}
