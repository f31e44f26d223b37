import type { CriterionValues, ScoredRow } from '../../../shared-types/comparison.ts';
import type { Money } from '../../../shared-types/money.ts';
import type { Settings } from '../../../shared-types/settings.ts';
import type {
  BeforeAfter,
  PairedMargin,
  UpgradeMoney,
  UpgradeOnTour,
} from '../../../shared-types/upgrade.ts';
import { wilsonInterval } from '../flow/risk.ts';
import { pairedMargin } from './paired-margin.ts';
import { hasOtherMoney, payBackOf } from './pay-back.ts';
import { scorecard } from './scorecard.ts';
import { effectOf, isClear } from './upgrade-effect.ts';
import { marginChangeText, tourSentence } from './upgrade-words.ts';

/** A kit walked through a tour. */
export interface KitOnTour {
  /** Margin and risk are found anew on the pairs. */
  readonly values: Omit<CriterionValues, 'margin' | 'risk'>;
  /** Each history's own largest factor of use carried. */
  readonly factors: Float64Array;
  /** Nights that must have a wall; null where one every night is not enough. */
  readonly nightsNeeded: number | null;
  readonly airborne: boolean;
}

/** A tour walked with a kit before and after a change, on the same histories. */
export interface WalkedUpgrade {
  readonly tour: {
    readonly id: string;
    readonly label: string;
    readonly days: number;
    readonly demandWhPerDay: number;
  };
  readonly kits: BeforeAfter<KitOnTour>;
}

/** Under what terms a change is judged. */
export interface UpgradeTerms {
  readonly settings: Pick<Settings, 'currency' | 'money' | 'preferences' | 'risk'>;
  /** What the change costs. */
  readonly money: Pick<UpgradeMoney, 'net' | 'apart'>;
}

/** Judges a change of a kit on one tour. */
export function judgeUpgrade({ tour, kits }: WalkedUpgrade, terms: UpgradeTerms): UpgradeOnTour {
  const { money, settings } = terms;
  const margin = pairedMargin(kits.before.factors, kits.after.factors, settings.risk.confidence);
  const flat = flatIn(kits);
  const rows = rowsOf(kits, margin, settings);
  const wallNights = { before: kits.before.nightsNeeded, after: kits.after.nightsNeeded };
  const changesNothing =
    Math.abs(margin.difference) <= onePoint &&
    flat.before === flat.after &&
    wallNights.before === wallNights.after;
  const effect = effectOf({ margin, rows });
  const addedG = kits.after.values.grams - kits.before.values.grams;
  const extraWhPerDay = margin.difference * tour.demandWhPerDay;
  const histories = kits.before.factors.length;
  return {
    tourId: tour.id,
    ...{ label: tour.label, days: tour.days, effect, changesNothing, margin, extraWhPerDay, wallNights },
    sentence: tourSentence({ label: tour.label, effect, changesNothing, margin, rows }),
    score: { before: rows.before.score, after: rows.after.score },
    marginText: marginChangeText(margin),
    risk: {
      before: wilsonInterval(flat.before, histories),
      after: wilsonInterval(flat.after, histories),
    },
    ...{ mended: flat.mended, spoiled: flat.spoiled },
    minutesLost: { before: kits.before.values.minutesLost, after: kits.after.values.minutesLost },
    moneyPerWh: isClear(margin) ? perWh(money, extraWhPerDay) : null,
    marginPointsPer100g: addedG > 0 ? (margin.difference * pointsPerShare) / (addedG / hundredG) : null,
    payBack: payBackOf({ money, wallNights, tourDays: tour.days, wallNight: settings.money.wallNight }),
  };
}

const onePoint = 0.01;
const pointsPerShare = 100;
const hundredG = 100;

/** A price of which a part is not converted would make every watt-hour look cheap. */
function perWh({ net, apart }: UpgradeTerms['money'], extraWh: number): Money | null {
  if (hasOtherMoney(apart) || net.minor <= 0 || !(extraWh > 0)) return null;
  return { ...net, minor: Math.round(net.minor / extraWh) };
}

/** How many histories have a flat must-have at the planned use: those that carry less than it. */
function flatIn({ before, after }: BeforeAfter<KitOnTour>) {
  const pairs = Array.from(before.factors, (factor, history) => ({
    before: factor < 1,
    after: after.factors[history]! < 1,
  }));
  const count = (holds: (pair: BeforeAfter<boolean>) => boolean): number => pairs.filter(holds).length;
  return {
    before: count((pair) => pair.before),
    after: count((pair) => pair.after),
    mended: count((pair) => pair.before && !pair.after),
    spoiled: count((pair) => !pair.before && pair.after),
  };
}

/** A difference of margins that may be luck is not scored: the kit after it is taken to have the margin before it. */
function rowsOf(
  { before, after }: BeforeAfter<KitOnTour>,
  margin: PairedMargin,
  { currency, preferences }: UpgradeTerms['settings'],
): BeforeAfter<ScoredRow> {
  const scored = (id: string, { airborne, values, factors }: KitOnTour, energyMargin: number) => ({
    ...{ id, airborne },
    values: { ...values, margin: energyMargin, risk: factors.filter((f) => f < 1).length / factors.length },
  });
  const afterMargin = isClear(margin) || Number.isNaN(margin.difference) ? margin.after : margin.before;
  const rows = scorecard(
    [scored('before', before, margin.before), scored('after', after, afterMargin)],
    preferences,
    currency,
  );
  const [first, second] = ['before', 'after'].map((id) => rows.find((row) => row.id === id)!);
  return { before: first!, after: second! };
}
