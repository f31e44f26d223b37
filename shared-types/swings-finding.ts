import type { Swings } from './swings.ts';
import { flipsText, labelOf } from './swing-words.ts';

/** What the swings show: what decides, or that nothing in its range does. */
export function swingsFinding(swings: Swings, locale?: string): string {
  const [widest] = swings.swings;
  const first = labelOf(swings, swings.firstId);
  if (widest === undefined) return `Nothing compared here rests on what is tried: ${first} stays first`;
  if (swings.level)
    return `${first} and ${labelOf(swings, swings.secondId)} are level as planned; ${lower(widest.name)} moves them most`;
  const deciding = swings.swings.filter(({ flips }) => flips.length > 0);
  const [decider] = deciding;
  if (decider === undefined)
    return `Nothing in its range changes the answer: ${first} stays first; ${lower(widest.name)} moves its lead most`;
  return `${decider.name} decides: ${flipsText(swings, decider, locale)}${othersText(deciding.length - 1)}`;
}

function othersText(others: number): string {
  if (others === 0) return '; nothing else in its range does';
  return others === 1 ? '; one other assumption may too' : `; ${others} other assumptions may too`;
}

function lower(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}
