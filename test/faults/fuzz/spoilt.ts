import fc from 'fast-check';
import { anyValue } from './any-value.ts';

/** What is done to the value at one place; `removed` takes the place away. */
type Damage = (given: unknown) => unknown;

const removed = Symbol('removed');

/** The same values with one place spoilt: another sort of value, one beyond a limit, a field too few or too many. */
export function spoilt(good: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  return fc.tuple(good, fc.nat(), damage).map(([value, pick, damaged]) => {
    const places = placesIn(value);
    return spoiltAt(value, places[pick % places.length]!, damaged);
  });
}

type Place = readonly PropertyKey[];

/** Good inputs are not half as deep; one that was spoilt before may have no end. */
const deepest = 24;

/** The value itself, its parts, and theirs. */
function placesIn(value: unknown, here: Place = []): Place[] {
  if (!isGroup(value) || here.length === deepest) return [here];
  return [here, ...Object.entries(value).flatMap(([key, part]) => placesIn(part, [...here, key]))];
}

function spoiltAt(value: unknown, [key, ...deeper]: Place, damaged: Damage): unknown {
  if (key === undefined) return damaged(value);
  if (!isGroup(value)) return value;
  const part = spoiltAt(value[key], deeper, damaged);
  if (Array.isArray(value)) {
    const at = Number(key);
    return part === removed ? value.toSpliced(at, 1) : value.with(at, part);
  }
  const { [key]: _, ...others } = value;
  return part === removed ? others : { ...others, [key]: part };
}

function isGroup(value: unknown): value is Record<PropertyKey, unknown> {
  return typeof value === 'object' && value !== null;
}

const otherSort: Damage = (given) => {
  if (typeof given === 'number') return String(given);
  if (typeof given === 'string') return given === '' ? [] : given.length;
  if (typeof given === 'boolean') return given ? 'yes' : 0;
  return Array.isArray(given) ? Object.fromEntries(given.entries()) : [given];
};

const figures: readonly ((given: number) => number)[] = [
  (given) => given + 1,
  (given) => given - 1,
  (given) => given + 0.5,
  (given) => -given,
  (given) => given * 1e9,
  (given) => given * 1e300 * 1e300,
];

const manyTimes = 20_000;
const texts: readonly ((given: string) => string)[] = [
  (given) => given.repeat(manyTimes),
  (given) => given.toUpperCase(),
  (given) => ` ${given}\n`,
  (given) => `${given}\ud83d`,
  (given) => `${given}\0`,
  () => '',
];

const lists: readonly ((given: readonly unknown[]) => unknown[])[] = [
  (given) => Array.from({ length: manyTimes }, (_, place) => given[place % given.length]),
  (given) => given.concat(given),
  (given) => given.toReversed(),
  () => [],
];

/** As far as its sort goes; a group gets a field that nobody knows. */
function beyond(kind: number): Damage {
  return (given) => {
    if (typeof given === 'number') return figures[kind % figures.length]!(given);
    if (typeof given === 'string') return texts[kind % texts.length]!(given);
    if (Array.isArray(given)) return lists[kind % lists.length]!(given);
    return isGroup(given) ? { ...given, unheardOf: kind } : otherSort(given);
  };
}

const damage: fc.Arbitrary<Damage> = fc.oneof(
  { weight: 3, arbitrary: fc.nat().map(beyond) },
  { weight: 2, arbitrary: anyValue.map((value) => () => value) },
  { weight: 1, arbitrary: fc.constant(otherSort) },
  { weight: 1, arbitrary: fc.constant(() => removed) },
);
