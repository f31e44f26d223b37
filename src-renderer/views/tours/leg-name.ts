import type { Leg } from '../../../shared-types/tour.ts';

/** What a leg is called where it may have no label: its place, from 1. */
export function legName({ label }: Pick<Leg, 'label'>, place: number): string {
  return label.trim() === '' ? `leg ${place + 1}` : label;
}
