/** All texts of a laid-out content tree in reading order, so that a test can ask what a page says before it is drawn. */
export function textsOf(content: unknown): string[] {
  if (typeof content === 'string') return [content];
  if (Array.isArray(content)) return content.flatMap(textsOf);
  if (typeof content !== 'object' || content === null) return [];
  return ['text', 'stack', 'columns', 'table', 'body'].flatMap((key) =>
    key in content ? textsOf((content as Record<string, unknown>)[key]) : [],
  );
}

/** Every value of one property anywhere in a content tree. */
export function valuesOf(content: unknown, property: string): unknown[] {
  if (Array.isArray(content)) return content.flatMap((each) => valuesOf(each, property));
  if (typeof content !== 'object' || content === null) return [];
  return Object.entries(content).flatMap(([key, value]) =>
    key === property ? [value as unknown] : valuesOf(value, property),
  );
}
