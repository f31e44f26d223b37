import fc from 'fast-check';

/*
 * Values of no shape at all: whatever JSON or the copying of a value between processes can carry, however deep, long or odd.
 */

/** Deeper than any program that walks a value by calling itself can go. */
const abyss = 20_000;
const endless = 100_000;

const deep = fc.constantFrom('[]', '{}').map((kind) => {
  let value: unknown = null;
  for (let level = 0; level < abyss; level += 1) value = kind === '[]' ? [value] : { id: value };
  return value;
});

const long = fc.oneof(
  fc.constantFrom<unknown>(0, '', null, 'a-1').map((each) => new Array<unknown>(endless).fill(each)),
  fc.constantFrom('x', '\ud83d', '"', '\0').map((character) => character.repeat(endless)),
  fc.constant(Object.fromEntries(Array.from({ length: 2000 }, (_, place) => [`field-${place}`, place]))),
);

const ringed = fc.constant(null).map(() => {
  const group: Record<string, unknown> = { id: 'a-1' };
  return Object.assign(group, { itself: group, list: [group] });
});

/** Names that mean something to the language itself, as own fields. */
const languageNames = fc
  .constantFrom('__proto__', 'constructor', 'toString', 'hasOwnProperty', 'then', 'length')
  .chain((name) =>
    fc
      .jsonValue({ maxDepth: 1 })
      .map((value) => JSON.parse(`{"${name}":${JSON.stringify(value)}}`) as unknown),
  );

/** Texts, figures and the like that stand at the edge of their sort. */
const oddScalar: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(NaN, Infinity, -Infinity, -0, 1e308, -1e308, 5e-324, 2 ** 53, 0.1 + 0.2),
  fc.constantFrom<unknown>(undefined, null, true, 0, 1, -1, '', ' ', '0', 'null', '\ud83d', 'a\0b', '\u202e'),
  fc.string({ unit: 'binary', maxLength: 20 }),
  fc.double(),
  fc.bigInt(),
);

/** What copying between processes can carry and JSON cannot: maps, dates, bytes, holes in lists, groups without a prototype. */
const beyondJson = fc.anything({
  maxDepth: 3,
  ...{ withBigInt: true, withBoxedValues: true, withDate: true, withMap: true, withSet: true },
  ...{ withNullPrototype: true, withSparseArray: true, withTypedArray: true },
});

export const anyValue: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 5, arbitrary: beyondJson },
  { weight: 4, arbitrary: fc.jsonValue({ maxDepth: 4 }) },
  { weight: 4, arbitrary: oddScalar },
  { weight: 2, arbitrary: languageNames },
  { weight: 1, arbitrary: ringed },
  { weight: 1, arbitrary: long },
  { weight: 1, arbitrary: deep },
);
