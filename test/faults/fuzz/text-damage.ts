import fc from 'fast-check';

/* What happens to the text of a file on cards, in mails and in editors. */

/** A place in a text, as a share of it. */
export const share = fc.double({ min: 0, max: 1, noNaN: true });

/** Characters before that place. */
export function at(text: string, place: number): number {
  return Math.floor(place * text.length);
}

type Texts = fc.Arbitrary<string>;

export function cutShort(good: Texts): Texts {
  return fc.tuple(good, share).map(([text, place]) => text.slice(0, at(text, place)));
}

/** With something wrong in the place of as many characters. */
export function overwritten(good: Texts, wrong: Texts): Texts {
  return fc.tuple(good, share, wrong).map(([text, place, other]) => {
    const from = at(text, place);
    return text.slice(0, from) + other + text.slice(from + other.length);
  });
}

export function twice(good: Texts): Texts {
  return good.map((text) => text + text);
}

/** UTF-16 taken for a text of single bytes. */
export function spacedByNuls(good: Texts): Texts {
  return good.map((text) => text.split('').join('\0'));
}
