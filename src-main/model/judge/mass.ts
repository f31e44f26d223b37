import type { Mass } from '../../../shared-types/comparison.ts';
import type { ItemKind } from '../../../shared-types/item.ts';
import type { Mount } from '../../../shared-types/item-common.ts';

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

/**
 * Part of a load that the front wheel carries, by moment balance: its distance ahead of the rear axle over the wheelbase.
 * Distances on a touring bicycle of 1.08 m wheelbase (common practice, no source): front hub 1.08, lowrider 1.03, handlebar
 * 0.86, middle of the frame 0.54, rear rack 0.05, rider 0.45 m. A hub is in the wheel and counts whole.
 */
export const frontWheelShare: Readonly<Record<Mount, number>> = {
  'front-wheel': 1,
  fork: 0.95,
  handlebar: 0.8,
  frame: 0.5,
  'rear-rack': 0.05,
  body: 0.42,
};

/** Grams carried, net of what is replaced, and the part on the front wheel. */
export function massOf(lines: readonly WeighedLine[]): Mass {
  const weighed = lines.map(({ massG, replacesG, ...line }) => {
    const netG = (massG - replacesG) * line.quantity;
    return { ...line, netG, frontWheelG: netG * frontWheelShare[line.mount] };
  });
  return {
    carriedG: weighed.reduce((sum, line) => sum + line.netG, 0),
    frontWheelG: weighed.reduce((sum, line) => sum + line.frontWheelG, 0),
    lines: weighed,
  };
}
