import { labelWh, type Item, type ItemOf } from '../../shared-types/item.ts';
import type { Scenario } from '../../shared-types/scenario.ts';
import { pieceLabel, type StoreRole } from '../../shared-types/stop-plan.ts';
import type { Tour } from '../../shared-types/tour.ts';

/** One device or bank that stands beside the wall. */
export interface StopPiece {
  /** Of item and number, for use in the path of a field. */
  readonly key: string;
  readonly itemId: string;
  readonly copy: number;
  readonly label: string;
  readonly role: StoreRole;
  /** False for a direct load, which is fed while it runs or not at all. */
  readonly stores: boolean;
  /** Indicator lights that a rider counts; 0 where there are none, or so many that they are a percentage. */
  readonly lights: number;
}

/** More lights than this nobody counts. */
const mostLightsCounted = 20;

/** What a rider has along: owned devices of the tour, and the banks of the scenario. */
export function piecesOf(
  tour: Pick<Tour, 'leftAtHome'>,
  scenario: Pick<Scenario, 'kit'>,
  items: readonly Item[],
): readonly StopPiece[] {
  const devices = items.filter(
    (item): item is ItemOf<'device'> =>
      item.kind === 'device' && item.state === 'owned' && !tour.leftAtHome.includes(item.id),
  );
  const banks = scenario.kit.flatMap(({ itemId, quantity }) => {
    const item = items.find(({ id }) => id === itemId);
    return item?.kind === 'bank' && item.state !== 'retired' ? [{ item, quantity }] : [];
  });
  return [
    ...devices.flatMap((item) => copiesOf(item, item.quantity, item.importance)),
    ...banks.flatMap(({ item, quantity }) => copiesOf(item, quantity, 'bank')),
  ];
}

function copiesOf(
  item: ItemOf<'device'> | ItemOf<'bank'>,
  quantity: number,
  role: StoreRole,
): readonly StopPiece[] {
  const lights = item.kind === 'bank' && item.lights <= mostLightsCounted ? item.lights : 0;
  const stores = item.kind === 'bank' || labelWh(item.capacity) > 0;
  return Array.from({ length: quantity }, (_, copy) => ({
    key: `${item.id}#${copy}`,
    itemId: item.id,
    copy,
    label: pieceLabel(item.label, copy, quantity),
    role,
    stores,
    lights,
  }));
}
