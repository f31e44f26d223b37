import sax from 'sax';

export interface ReadTag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
}

/** Reads a drawing strictly; throws where it is not well-formed XML. */
function read(drawing: string): { readonly tags: readonly ReadTag[]; readonly texts: readonly string[] } {
  const tags: ReadTag[] = [];
  const texts: string[] = [];
  const parser = sax.parser(true);
  parser.onopentag = ({ name, attributes }) => {
    const plain = Object.entries(attributes).map(([key, value]) => [key, String(value)]);
    tags.push({ name, attributes: Object.fromEntries(plain) as Record<string, string> });
  };
  parser.ontext = (words) => void texts.push(words);
  parser.onerror = (fault) => {
    throw fault;
  };
  parser.write(drawing).close();
  return { tags, texts };
}

export function tagsOf(drawing: string): readonly ReadTag[] {
  return read(drawing).tags;
}

export function textsIn(drawing: string): readonly string[] {
  return read(drawing).texts;
}

/** Attributes that hold lengths and places. */
const measured =
  /^(x|y|x1|y1|x2|y2|cx|cy|r|d|width|height|viewBox|font-size|stroke-width|stroke-dasharray)$/u;

/** Every length and place of a drawing; NaN for what is no number. */
export function numbersOf(drawing: string): readonly number[] {
  return tagsOf(drawing).flatMap(({ attributes }) =>
    Object.entries(attributes).flatMap(([name, value]) =>
      measured.test(name)
        ? value
            .replaceAll(/[MLZ]/gu, ' ')
            .trim()
            .split(/\s+/u)
            .map((each) => (each === '' ? Number.NaN : Number(each)))
        : [],
    ),
  );
}

/** Attributes of the tags of one name, in order. */
export function attributesOf(drawing: string, name: string): readonly ReadTag['attributes'][] {
  return tagsOf(drawing)
    .filter((tag) => tag.name === name)
    .map(({ attributes }) => attributes);
}
