import { formatNumber } from '../../../shared-types/figures.ts';

export function countOfItems(count: number): string {
  return count === 1 ? '1 item' : `${formatNumber(count)} items`;
}
