/** Turns the name of a custom property into the colour it has now, in a form a canvas takes. */
export type Palette = (property: string) => string;

/** Custom properties hold expressions (`light-dark(...)`); only a used property gives the colour itself. */
export function readPalette(near: HTMLElement): Palette {
  const known = new Map<string, string>();
  return (property) => {
    const colour = known.get(property) ?? usedColour(near, property);
    known.set(property, colour);
    return colour;
  };
}

function usedColour(near: HTMLElement, property: string): string {
  const probe = document.createElement('span');
  probe.style.color = `var(${property})`;
  near.append(probe);
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
}

/** The same colour, let through by `share`. */
export function faded(colour: string, share: number): string {
  const parts = colour.match(/[\d.]+/g)?.slice(0, 3) ?? [];
  return `rgba(${parts.join(', ')}, ${share})`;
}
