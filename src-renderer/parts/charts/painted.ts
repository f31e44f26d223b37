/*
 * A figure built of boxes and words, painted on a canvas as it stands on the page, so that it can be kept as a picture like a
 * chart. Only what our figures use is painted: backgrounds of one colour, edges and text.
 */

/** Paints an element and all in it, one canvas pixel a device pixel. */
export function painted(element: HTMLElement, scale = window.devicePixelRatio): HTMLCanvasElement | null {
  const frame = element.getBoundingClientRect();
  const canvas = document.createElement('canvas');
  canvas.width = Math.ceil(frame.width * scale);
  canvas.height = Math.ceil(frame.height * scale);
  const pen = canvas.getContext('2d');
  if (pen === null) return null;
  pen.scale(scale, scale);
  pen.translate(-frame.left, -frame.top);
  pen.textBaseline = 'middle';
  for (const each of [element, ...element.querySelectorAll<HTMLElement>('*')]) paintElement(pen, each);
  return canvas;
}

function paintElement(pen: CanvasRenderingContext2D, element: HTMLElement): void {
  const style = getComputedStyle(element);
  const box = element.getBoundingClientRect();
  pen.fillStyle = style.backgroundColor;
  pen.fillRect(box.left, box.top, box.width, box.height);
  paintEdges(pen, box, style);
  for (const node of element.childNodes) if (node.nodeType === Node.TEXT_NODE) writeText(pen, node, style);
}

function paintEdges(pen: CanvasRenderingContext2D, box: DOMRect, style: CSSStyleDeclaration): void {
  const px = (width: string): number => Number.parseFloat(width) || 0;
  const [top, right, bottom, left] = [
    px(style.borderTopWidth),
    px(style.borderRightWidth),
    px(style.borderBottomWidth),
    px(style.borderLeftWidth),
  ];
  const edges = [
    { colour: style.borderTopColor, of: [box.left, box.top, box.width, top] },
    { colour: style.borderRightColor, of: [box.right - right, box.top, right, box.height] },
    { colour: style.borderBottomColor, of: [box.left, box.bottom - bottom, box.width, bottom] },
    { colour: style.borderLeftColor, of: [box.left, box.top, left, box.height] },
  ] as const;
  for (const { colour, of } of edges) {
    pen.fillStyle = colour;
    pen.fillRect(...of);
  }
}

/** Each line of a text where it stands. */
function writeText(pen: CanvasRenderingContext2D, node: Node, style: CSSStyleDeclaration): void {
  pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
  pen.fillStyle = style.color;
  for (const { text, box } of linesOf(node))
    pen.fillText(text, box.left, box.top + box.height / 2, box.width);
}

interface TextLine {
  readonly text: string;
  readonly box: DOMRect;
}

/** A text node broken as the page breaks it: characters of one line share their top. */
function linesOf(node: Node): readonly TextLine[] {
  const whole = node.textContent ?? '';
  if (whole.trim() === '') return [];
  const range = document.createRange();
  const boxOf = (from: number, to: number): DOMRect => {
    range.setStart(node, from);
    range.setEnd(node, to);
    return range.getBoundingClientRect();
  };
  const starts = Array.from(whole, (_, at) => at).filter(
    (at) => at === 0 || boxOf(at, at + 1).top > boxOf(at - 1, at).top,
  );
  return starts.map((from, line) => {
    const to = starts[line + 1] ?? whole.length;
    return { text: whole.slice(from, to).trim(), box: boxOf(from, to) };
  });
}
