import type { Item, ItemOf } from '../../../shared-types/item.ts';
import { meanKmh, meterWh, type ReadingOf } from '../../../shared-types/reading.ts';
import { noCurrency, usualItem } from '../../../shared-types/usual-item.ts';
import { countedWh, times } from '../../model/field-log/cells.ts';
import { generatorWheel, type ConverterModel } from '../../model/ride/hub.ts';
import { converterModel } from '../assemble/ride.ts';
import type { Measured, ReadCell } from './measures.ts';

/** Through which converter a hub is taken to have been read. */
export interface PlugConverter {
  readonly words: string;
  readonly model: ConverterModel;
}

/** The rider's own converter, the first where there are several; a usual one where there is none. */
export function plugConverter(items: readonly Item[]): PlugConverter {
  const own = items.find((item) => item.kind === 'converter' && item.state === 'owned');
  return own?.kind === 'converter'
    ? { words: `your ${own.label}`, model: converterModel(own) }
    : { words: 'a usual converter', model: converterModel(usualItem('converter', noCurrency)) };
}

/**
 * The yield of a hub at the plug: what a meter counted over what the hub promises at the mean speed of the ride. Rides without
 * a distance, and those below the start of the converter, tell nothing of it.
 *
 * Where the power rises ever less with speed, a ride of changing speeds gives less than its mean speed would (Jensen's
 * inequality), and what was ridden below the start gives nothing. So the yield comes out too low rather than too high, and a
 * margin with it. Through a tracking converter the power is all but straight, and the mean speed tells nearly the mean power;
 * only a curve of the rider's own that bends up does the opposite.
 */
export function yieldMeasured(
  hub: ItemOf<'generator-hub'>,
  rides: readonly ReadingOf<'ride'>[],
  converter: PlugConverter,
): Measured {
  const { plugW } = generatorWheel(hub, converter.model);
  return {
    measure: 'hub-yield',
    name: 'Yield at the plug while riding',
    basis: `What a meter counted, of what its ${promiseWord(hub)} promises at the mean speed through ${converter.words}. Where your speed changed, this comes out low rather than high, for a hub gives ever less for each km/h more.`,
    cells: rides.flatMap((reading) => yieldCell(reading, plugW)),
  };
}

function yieldCell(reading: ReadingOf<'ride'>, plugW: (speedKmh: number) => number): readonly ReadCell[] {
  const speedKmh = meanKmh(reading);
  if (speedKmh === null) return [];
  const promisedWh = plugW(speedKmh) * reading.hours;
  return promisedWh > 0 ? [{ reading, cell: times(countedWh(meterWh(reading.energy)), 1 / promisedWh) }] : [];
}

/** What promises the power of a hub. */
export function promiseWord({ power }: ItemOf<'generator-hub'>): string {
  return power.as === 'rating' ? 'rating' : 'curve';
}
