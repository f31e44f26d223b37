import type { PanelSun } from '../../../../shared-types/leg-sun.ts';

/** How many panels can be told apart side by side, and how many bars before they are slivers. */
const mostTogether = 4;
const mostBars = 64;

/** The panels with those that are carried first: it is they the rider asks about. */
export function carriedFirst(panels: readonly PanelSun[], carried: readonly string[]): readonly PanelSun[] {
  const isCarried = ({ itemId }: PanelSun): boolean => carried.includes(itemId);
  return [...panels.filter(isCarried), ...panels.filter((panel) => !isCarried(panel))];
}

export function fitTogether(panels: number, periods: number): boolean {
  return panels <= 1 || (panels <= mostTogether && panels * periods <= mostBars);
}

/** The panels drawn: all where they fit together, else the chosen one, and the first until one is chosen. */
export function drawnPanels(
  panels: readonly PanelSun[],
  periods: number,
  chosenId: string | null,
): readonly PanelSun[] {
  if (fitTogether(panels.length, periods)) return panels;
  const chosen = panels.find(({ itemId }) => itemId === chosenId);
  return chosen === undefined ? panels.slice(0, 1) : [chosen];
}
