import type { ItemOf } from '../../../shared-types/item.ts';
import type { Money } from '../../../shared-types/money.ts';
import type { HubPart } from '../../model/judge/hub-cost.ts';
import type { FrontShares } from '../../model/judge/front-load.ts';
import { ofKind, type CarriedItem } from './kit.ts';

/** What belongs to the generator hub of a kit, part by part: hub, wheel, converter, cables. Nothing without a hub. */
export function hubSet(lines: readonly CarriedItem[], shares: FrontShares): readonly HubPart[] {
  const whole = (line: CarriedItem): HubPart => wholeItem(line, shares);
  const hubs = ofKind(lines, 'generator-hub');
  if (hubs.length === 0) return [];
  return [
    ...hubs.flatMap(wheelParts),
    ...ofKind(lines, 'converter').map(whole),
    ...ofKind(lines, 'accessory')
      .filter(({ item }) => item.forHub)
      .map(whole),
  ];
}

type Hub = ItemOf<'generator-hub'>;

/** All of it turns in the front wheel. */
function wheelParts({ item, carried }: CarriedItem<Hub>): readonly HubPart[] {
  const part = (name: string, price: Money | null, netG: number): HubPart => ({
    part: name,
    price: price === null ? null : { ...price, minor: price.minor * carried },
    netG: netG * carried,
    frontWheelShare: 1,
  });
  return [
    part(item.label, item.price, item.massG),
    part('Hub that comes off', null, -item.replacesG),
    part('Rim, net of the old one', item.rim.cost, item.rim.massG - item.rim.replacesG),
    part('Spokes, net of the old ones', item.spokes.cost, item.spokes.massG - item.spokes.replacesG),
    part('Wheel building', item.labour, 0),
  ];
}

function wholeItem({ item, carried }: CarriedItem, shares: FrontShares): HubPart {
  return {
    part: item.label,
    price: { ...item.price, minor: item.price.minor * carried },
    netG: item.massG * carried,
    frontWheelShare: shares[item.mount],
  };
}
