import type { Mode } from './modes.ts';

/** What a row of modes is worth; more is better. */
export type Merit = (modes: readonly Mode[]) => number;

/** So many different modes are tried in every order. */
const mostOrdered = 5;

/** Modes of a kind put in a row, in the best order, and those given up that others do as well. */
export function fewerModes(modes: readonly Mode[], merit: Merit): readonly Mode[] {
  let best = bestOf(modes, merit, [modes, ...ordered(modes)]);
  for (const rare of new Set(modes))
    for (const other of new Set(best)) {
      if (rare === other) continue;
      const without = best.map((mode) => (mode === rare ? other : mode));
      best = bestOf(best, merit, ordered(without));
    }
  return best;
}

function bestOf(known: readonly Mode[], merit: Merit, tried: readonly (readonly Mode[])[]): readonly Mode[] {
  let [best, most] = [known, merit(known)];
  for (const modes of tried) {
    const reached = merit(modes);
    if (reached > most) [best, most] = [modes, reached];
  }
  return best;
}

/** The same modes, those of a kind together, in every order of the kinds; as they first come where there are too many. */
function ordered(modes: readonly Mode[]): readonly (readonly Mode[])[] {
  const kinds = [...new Set(modes)];
  const orders = kinds.length <= mostOrdered ? permuted(kinds) : [kinds];
  return orders.map((order) => order.flatMap((kind) => modes.filter((mode) => mode === kind)));
}

function permuted(kinds: readonly Mode[]): readonly (readonly Mode[])[] {
  if (kinds.length <= 1) return [kinds];
  return kinds.flatMap((first) =>
    permuted(kinds.filter((kind) => kind !== first)).map((rest) => [first, ...rest]),
  );
}

/** Slots exchanged or made like a neighbour, and kinds put in another order, as long as that is better. */
export function fewerMoves(modes: readonly Mode[], merit: Merit): readonly Mode[] {
  let best = modes;
  for (;;) {
    const better = bestOf(best, merit, [...ordered(best), ...neighbours(best)]);
    if (better === best) return best;
    best = better;
  }
}

function neighbours(modes: readonly Mode[]): readonly (readonly Mode[])[] {
  const exchanged = modes.flatMap((a, i) =>
    modes.slice(i + 1).flatMap((b, less) => (a === b ? [] : [modes.with(i, b).with(i + 1 + less, a)])),
  );
  const alike = modes.flatMap((mode, i) =>
    [modes[i - 1], modes[i + 1]].flatMap((other) =>
      other === undefined || other === mode ? [] : [modes.with(i, other)],
    ),
  );
  return [...exchanged, ...alike];
}
