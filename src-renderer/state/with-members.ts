/** A set of nothing, to begin with. */
export const noMembers: ReadonlySet<never> = new Set();

/** The set with these members in it, or with them taken out; the set given stays as it is, so that a change is another object. */
export function withMembers<T>(set: ReadonlySet<T>, members: readonly T[], present: boolean): ReadonlySet<T> {
  const next = new Set(set);
  for (const member of members) {
    if (present) next.add(member);
    else next.delete(member);
  }
  return next;
}
