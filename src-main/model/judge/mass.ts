import type { Mass } from '../../../shared-types/comparison.ts';
import type { ItemKind } from '../../../shared-types/item.ts';
import type { Mount } from '../../../shared-types/item-common.ts';
import type { FrontShares } from './front-load.ts';

/** One line of a kit with its mass. */
export interface WeighedLine {
  readonly itemId: string;
  readonly label: string;
  readonly kind: ItemKind;
  readonly quantity: number;
  readonly mount: Mount;
  /** Of one, g. */
  readonly massG: number;
  /** Of what one replaces, g. */
  readonly replacesG: number;
}

/** Grams carried, net of what is replaced, and the part on the front wheel. */
export function massOf(lines: readonly WeighedLine[], shares: FrontShares): Mass {
  const weighed = lines.map(({ massG, replacesG, ...line }) => {
    const netG = (massG - replacesG) * line.quantity;
    // A generator hub is the front hub, wherever the catalogue says it rides.
    const share = line.kind === 'generator-hub' ? 1 : shares[line.mount];
    return { ...line, netG, frontWheelG: netG * share };
  });
  return {
    carriedG: weighed.reduce((sum, line) => sum + line.netG, 0),
    frontWheelG: weighed.reduce((sum, line) => sum + line.frontWheelG, 0),
    lines: weighed,
  };
}
