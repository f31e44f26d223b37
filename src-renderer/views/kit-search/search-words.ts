import { formatNumber, moneyText, percent, withUnit } from '../../../shared-types/figures.ts';
import { marginLadder, type FoundKit, type KitSearchResult } from '../../../shared-types/kit-search.ts';
import { display } from '../../state/display.svelte.ts';

/** `at least +30 %`: margins are told by steps. */
export function atLeast({ margin }: Pick<FoundKit, 'margin'>, locale?: string): string {
  const figure = percent(margin.value, { signed: true, locale });
  return margin.capped ? `more than ${figure}` : `at least ${figure}`;
}

/** What a kit holds, in a line. */
export function kitLine({ items }: Pick<FoundKit, 'items'>): string {
  if (items.length === 0) return 'nothing at all';
  return items.map(({ label, quantity }) => (quantity > 1 ? `${quantity} × ${label}` : label)).join('; ');
}

/** What the search found, in a sentence: the lightest kit that carries the plan. */
export function finding({ kits, complete }: KitSearchResult, locale?: string): string {
  if (kits.length === 0) return complete ? 'No kit is within your limits' : 'No kit found so far';
  const count = `${formatNumber(kits.length, { locale })} ${kits.length === 1 ? 'kit' : 'kits'}`;
  const found = `${count} that no other beats${complete ? '' : ' so far'}`;
  const carrying = kits.filter(({ margin }) => margin.value >= 0);
  if (carrying.length === 0) return `${found}; none carries the plan`;
  const lightest = carrying.reduce((a, b) => (b.grams < a.grams ? b : a));
  const figures = `${display.mass(lightest.grams, { locale })} and costs ${moneyText(lightest.toBuy, locale)}`;
  return `${found}; the lightest that carries the plan weighs ${figures}`;
}

/** In what steps its margins are told. */
export function ladderText(locale?: string): string {
  const steps = marginLadder.map(({ upTo, points }) => {
    const reach = Number.isFinite(upTo) ? `up to ${percent(upTo - 1, { signed: true, locale })}` : 'above';
    return `of ${points} points ${reach}`;
  });
  return `they are told in steps ${steps.join(', ')}`;
}

/** How the search went: how many were walked, and why the others were not. */
export function tallyText({ tally, seconds, complete }: KitSearchResult, locale?: string): string {
  const count = (value: number): string => formatNumber(value, { locale });
  const settled = tally.walked + tally.idleItem + tally.tooLittleSupply + tally.stoppedEarly;
  const scope = complete ? `${count(tally.kits)} kits` : `${count(settled)} of ${count(tally.kits)} kits`;
  return `${scope} in ${withUnit(seconds, 's', { digits: 1, locale })}: ${count(tally.walked)} walked to their margin; beaten before that: ${count(tally.idleItem)} hold something that does nothing, ${count(tally.tooLittleSupply)} have too little supply, ${count(tally.stoppedEarly)} fail too often.`;
}
