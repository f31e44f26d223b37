import { painted } from './painted.ts';
import { readPalette } from './palette.ts';
import { chartPicture } from './picture.ts';

/** A figure built of boxes and words as a PNG that stands alone, under its title; null when it is not on the page. */
export async function paintedPicture(
  figure: HTMLElement | undefined,
  title: string,
  subtitle: string,
): Promise<Blob | null> {
  const canvas = figure === undefined ? null : painted(figure);
  if (figure === undefined || canvas === null) return null;
  const text = { title, subtitle, legend: [] };
  return chartPicture(canvas, text, readPalette(document.body), figure.clientWidth);
}
