import type { ClearnessDistribution } from '../../src-main/model/sun/history/clearness-distribution.ts';

/**
 * Share of days at most this clear, as Bendt, Collares-Pereira & Rabl print it (1981, Solar Energy 27:1-5):
 * F(K) = (exp(g Kmin) - exp(g K)) / (exp(g Kmin) - exp(g Kmax)). The model has only its inverse.
 */
export function shareBelow({ dullest, clearest, gamma }: ClearnessDistribution, clearness: number): number {
  if (clearness <= dullest) return 0;
  if (clearness >= clearest) return 1;
  if (gamma === 0) return (clearness - dullest) / (clearest - dullest);
  const [least, here, most] = [dullest, clearness, clearest].map((k) => Math.exp(gamma * k));
  return (least! - here!) / (least! - most!);
}
