type Group = Readonly<Record<string, unknown>>;

/** Whether two values of plain data say the same, however deep; no number is the same as no number. */
export function alike(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((each, place) => alike(each, other[place]));
  if (!isGroup(one) || !isGroup(other)) return false;
  return haveSameKeys(one, other) && Object.keys(one).every((key) => alike(one[key], other[key]));
}

/** `now` with the change from `from` to `to` made in it; what has come to differ from `from` meanwhile stays. */
export function carriedOver<Value>(now: Value, from: Value, to: Value): Value {
  if (alike(now, to) || alike(now, from)) return to;
  const merged = alike(from, to) ? now : byParts(now, from, to);
  return alike(merged, to) ? to : merged;
}

function byParts<Value>(now: Value, from: Value, to: Value): Value {
  if (Array.isArray(now) && Array.isArray(from) && Array.isArray(to)) {
    const sameLength = now.length === from.length && now.length === to.length;
    if (!sameLength) return now;
    return now.map((each: unknown, place) =>
      carriedOver<unknown>(each, from[place], to[place]),
    ) as typeof now;
  }
  if (!isGroup(now) || !isGroup(from) || !isGroup(to)) return now;
  // Groups of other keys are other branches of a choice, whose parts do not mix.
  if (!haveSameKeys(now, from) || !haveSameKeys(now, to)) return now;
  const parts = Object.keys(now).map((key) => [key, carriedOver<unknown>(now[key], from[key], to[key])]);
  return Object.fromEntries(parts) as typeof now;
}

/** The path of the smallest part that holds all that differs; null when nothing does. */
export function changedPath(from: unknown, to: unknown): readonly string[] | null {
  if (alike(from, to)) return null;
  const parts = [partsOf(from), partsOf(to)] as const;
  if (parts[0] === null || parts[1] === null || !haveSameKeys(parts[0], parts[1])) return [];
  const [one, other] = [parts[0], parts[1]];
  const [key, ...more] = Object.keys(one).filter((each) => !alike(one[each], other[each]));
  if (key === undefined || more.length > 0) return [];
  return [key, ...(changedPath(one[key], other[key]) ?? [])];
}

export function valueAt(root: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>((value, key) => partsOf(value)?.[key], root);
}

function partsOf(value: unknown): Group | null {
  return typeof value === 'object' && value !== null ? (value as Group) : null;
}

function isGroup(value: unknown): value is Group {
  return partsOf(value) !== null && !Array.isArray(value);
}

function haveSameKeys(one: Group, other: Group): boolean {
  const keys = Object.keys(one);
  return keys.length === Object.keys(other).length && keys.every((key) => Object.hasOwn(other, key));
}
