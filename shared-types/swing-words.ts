import { formatNumber, percent } from './figures.ts';
import type { Flip, Swing, Swings, SwingScale } from './swings.ts';

/** A value of an assumption as a rider reads it. */
export function swingValueText(scale: SwingScale, value: number, locale?: string): string {
  switch (scale) {
    case 'factor':
      return value === 1 ? 'as planned' : percent(value - 1, { signed: true, locale });
    case 'luck':
      return luckText(value, locale);
    case 'days':
      return `${formatNumber(value, { locale })}\u00a0${value === 1 ? 'day' : 'days'}`;
    case 'share':
      return percent(value, { locale });
    case 'number':
      return formatNumber(value, { digits: 2, locale });
  }
}

/** Where outlets stand between never, the plan and always. */
function luckText(luck: number, locale?: string): string {
  if (luck === 0) return 'as planned';
  const end = luck < 0 ? 'never' : 'always';
  return Math.abs(luck) === 1 ? end : `${percent(Math.abs(luck), { locale })} of the way to ${end}`;
}

/** The plan's own value; where it is no point of the range it is named, not numbered. */
export function plannedText({ scale, base }: Pick<Swing, 'scale' | 'base'>, locale?: string): string {
  return base === null ? 'as planned' : swingValueText(scale, base, locale);
}

export function labelOf({ scenarios }: Pick<Swings, 'scenarios'>, id: string): string {
  return scenarios.find((scenario) => scenario.id === id)?.label ?? 'a removed scenario';
}

/** Where the first gives up its place: `from 6 days on Generator hub leads`. */
export function flipText(
  swings: Pick<Swings, 'scenarios'>,
  scale: SwingScale,
  flip: Flip,
  locale?: string,
): string {
  const leads = flip.leaderId === null ? 'limits leave out all' : `${labelOf(swings, flip.leaderId)} leads`;
  return `${whereText(scale, flip, locale)} ${leads}`;
}

function whereText(scale: SwingScale, { side, value }: Flip, locale?: string): string {
  const text = swingValueText(scale, value, locale);
  if (side === 'at') return `at an even ${text} already`;
  if (scale === 'days')
    return side === 'below' ? `at ${text}${value > 1 ? ' or fewer' : ''}` : `from ${text} on`;
  // The way to never or to always has its direction in its words.
  if (scale === 'luck') return Math.abs(value) === 1 ? `at ${text}` : `from ${text}`;
  return `from ${text} ${side === 'below' ? 'down' : 'up'}`;
}

/** All flips of an assumption; `none in range` where the first keeps its place. */
export function flipsText(
  swings: Pick<Swings, 'scenarios' | 'level'>,
  { scale, flips }: Swing,
  locale?: string,
): string {
  if (swings.level) return 'level as planned';
  if (flips.length === 0) return 'none in range';
  return flips.map((flip) => flipText(swings, scale, flip, locale)).join('; ');
}
