import type { ItemKind } from '../../../shared-types/item.ts';
import type { Situation, Standing } from './advised.ts';

/** What each kind is good for at home and at work (common practice, no source). */
const offTheBicycle: Partial<Record<ItemKind, { readonly name: string; readonly use: string }>> = {
  bank: { name: 'the bank', use: 'useful on every train and in every power cut' },
  'wall-charger': { name: 'the wall charger', use: 'useful every day, for all that has a USB plug' },
  panel: { name: 'the panel', use: 'useful in any camp or garden, seldom at home' },
  'generator-hub': { name: 'the generator hub', use: 'useful on this bicycle only, but there every day' },
};

/** A rider who owns nothing yet is told which of it serves off the bicycle too. */
export function firstKitOf(best: Standing, { ownsNoKit }: Situation): string[] {
  if (!ownsNoKit) return [];
  const uses = Object.entries(offTheBicycle).filter(([kind]) =>
    best.scenario.kindsToBuy.includes(kind as ItemKind),
  );
  if (uses.length === 0) return [];
  const said = uses.map(([, { name, use }]) => `${name} is ${use}`).join('; ');
  return [`You own none of this kit yet: ${said}.`];
}
