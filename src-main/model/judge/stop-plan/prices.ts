import { boundAt, type Bound, type Prices } from './bound.ts';
import type { StopProblem } from './problem.ts';
import { weightOf } from './worth.ts';

/** Bank energy at these prices is short for nice-to-haves, or for must-haves; its own price is between or at them. */
const bankPrices = [weightOf['nice-to-have'], weightOf['must-have']] as const;

/** Prices are looked for between these, from nearly nothing to a must-have on the strongest plug. */
const lowestPrice = 1e-2;
const highestPrice = 1e7;
/** Times a price is halved in, and rounds through all of them: finer prices tighten nothing (measured). */
const halvings = 13;
const rounds = 2;
/** Rents of a kit step up at no more strengths than this: more cost time and tighten little (measured). */
const mostSteps = 4;

/**
 * Upper limits for states of a problem, each with the prices that suit its beginning. Where banks hold enough for all, their
 * energy is free and one limit says it all.
 */
export function tightBounds(problem: StopProblem): readonly Bound[] {
  const settled = pricesFor(problem, null);
  const fixed = settled.bankAWh === 0 ? [] : bankPrices.map((bankAWh) => pricesFor(problem, bankAWh));
  return [settled, ...fixed].map((prices) => boundAt(problem, prices));
}

/**
 * Prices at which the stores want, of ports, of the wall and of the banks, about as much as there is. A stronger port does
 * all that a weaker one does, so its rent is that of the weaker and something on top: each part is settled for all ports of
 * that strength and more.
 */
function pricesFor(problem: StopProblem, fixedBankAWh: number | null): Prices {
  const { plugs, hoursLeft, start } = problem;
  const { classes } = plugs;
  const stopH = hoursLeft[0]!;
  const strengths = stepsOf(classes.map(({ strengthW }) => strengthW));
  const onTop = strengths.map(() => 0);
  let wallAWh = 0;
  let bankAWh = fixedBankAWh ?? 0;
  const prices = (): Prices => ({
    portAnHour: classes.map(({ strengthW }) =>
      onTop.reduce((sum, part, step) => (strengths[step]! <= strengthW ? sum + part : sum), 0),
    ),
    wallAWh,
    bankAWh,
  });
  const wanted = () => boundAt(problem, prices()).wanted(start);
  const hoursFrom = (strengthW: number, hours: readonly number[]): number =>
    classes.reduce((sum, each, c) => (each.strengthW < strengthW ? sum : sum + hours[c]!), 0);
  for (let round = 0; round < rounds; round += 1) {
    if (fixedBankAWh === null)
      bankAWh = cleared((price) => {
        bankAWh = price;
        return wanted().bankWh > 0;
      });
    strengths.forEach((strengthW, step) => {
      const thereAre = hoursFrom(
        strengthW,
        classes.map(({ count }) => count * stopH),
      );
      onTop[step] = cleared((price) => {
        onTop[step] = price;
        return hoursFrom(strengthW, wanted().portHours) > thereAre;
      });
    });
    wallAWh = cleared((price) => {
      wallAWh = price;
      return wanted().wallWh > plugs.mostW * stopH;
    });
  }
  return prices();
}

/** Strengths at which a rent may step up, W: all, or a few where there are many. */
function stepsOf(strengthsW: readonly number[]): readonly number[] {
  const distinct = [...new Set(strengthsW)].sort((a, b) => a - b);
  const apart = Math.ceil(distinct.length / mostSteps);
  return distinct.filter((_, place) => place % apart === 0);
}

/** The price above which less is wanted than there is, by halving on a scale of magnitudes; 0 where there is enough for all. */
function cleared(isWantedMore: (price: number) => boolean): number {
  if (!isWantedMore(0)) return 0;
  let [low, high] = [lowestPrice, highestPrice];
  for (let halving = 0; halving < halvings; halving += 1) {
    const middle = Math.sqrt(low * high);
    if (isWantedMore(middle)) low = middle;
    else high = middle;
  }
  return high;
}
