import { grams, moneyText, withUnit, wordsLocale } from '../../../shared-types/figures.ts';
import type { Money } from '../../../shared-types/money.ts';
import type { Upgrade, UpgradeEffect, UpgradeOnTour, UpgradeVerdict } from '../../../shared-types/upgrade.ts';

/** What the verdict on a change is written from. */
export type Weighed = Pick<Upgrade, 'tours' | 'money' | 'grams' | 'frontWheelGrams'>;

/** The verdict over all tours, in words, with what the change costs. */
export function verdictOf(weighed: Weighed): UpgradeVerdict {
  return { ...headingOf(weighed.tours), why: `${priceText(weighed)} ${countText(weighed.tours)}` };
}

function headingOf(tours: readonly UpgradeOnTour[]): Pick<UpgradeVerdict, 'is' | 'heading'> {
  const helped = namesOf(tours, 'helps');
  if (tours.every(({ effect }) => effect === 'not-known')) return { is: 'not-known', heading: 'No verdict' };
  if (helped.length === tours.length) return { is: 'worth-it', heading: 'Worth it' };
  if (helped.length > 0) return { is: 'for-some', heading: `Only for ${inList(helped)}` };
  return {
    is: 'not-for-these',
    heading: tours.length === 1 ? 'Not for this tour' : 'Not for these tours',
  };
}

function namesOf(tours: readonly UpgradeOnTour[], effect: UpgradeEffect): readonly string[] {
  return tours.filter((tour) => tour.effect === effect).map(({ label }) => label);
}

/** `It costs 120 EUR and adds 400 g, none on the front wheel.` */
function priceText({ money, grams: mass, frontWheelGrams: front }: Weighed): string {
  const apart = money.apart.toBuy.filter(({ minor }) => minor > 0).map(inMoney);
  const wheel = front.after - front.before;
  const onWheel = Math.abs(wheel) < halfGram ? 'none' : signedG(wheel);
  return `${costText(money.net, apart)} and ${massText(mass.after - mass.before)}, ${onWheel} on the front wheel.`;
}

/** Below this a mass reads as 0 g. */
const halfGram = 0.5;

/** What is to be paid in other currencies is told beside it. */
function costText(net: Money, apart: readonly string[]): string {
  if (net.minor === 0)
    return apart.length === 0 ? 'It costs nothing' : `It costs ${inList(apart)}, not converted,`;
  const text =
    net.minor > 0 ? `It costs ${inMoney(net)}` : `It saves ${inMoney({ ...net, minor: -net.minor })}`;
  return apart.length === 0 ? text : `${text} (and ${inList(apart)}, not converted)`;
}

function massText(addedG: number): string {
  if (Math.abs(addedG) < halfGram) return 'weighs as much as before';
  return addedG > 0 ? `adds ${grams(addedG, wordsLocale)}` : `takes off ${grams(-addedG, wordsLocale)}`;
}

function signedG(massG: number): string {
  return withUnit(massG, 'g', { signed: true, locale: wordsLocale });
}

const told: readonly (readonly [UpgradeEffect, string])[] = [
  ['helps', 'it helps'],
  ['not-enough', 'it is better but the plan is still not carried'],
  ['no-odds', 'it makes no odds'],
  ['hurts', 'it leaves you worse off'],
  ['not-known', 'a figure is not known'],
];

/** `On Alps it helps; on Coast it makes no odds.` */
function countText(tours: readonly UpgradeOnTour[]): string {
  const parts = told.flatMap(([effect, words]) => {
    const names = namesOf(tours, effect);
    const where = tours.length === 1 ? 'this tour' : inList(names);
    return names.length === 0 ? [] : [`on ${where} ${words}`];
  });
  const text = parts.join('; ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function inMoney(money: Money): string {
  return moneyText(money, wordsLocale);
}

function inList(names: readonly string[]): string {
  return new Intl.ListFormat(wordsLocale, { type: 'conjunction' }).format(names);
}
