/** The few pieces of SVG every drawing is put together from. Strings in, strings out. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Left, top, width and height in drawing units. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Text made safe between tags and in quoted attributes. */
export function escapeText(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');
}

/** A coordinate to a tenth of a unit, as short as it can be written. */
export function coordinate(value: number): string {
  const rounded = Math.round(value * 10) / 10;
  return String(Object.is(rounded, -0) ? 0 : rounded);
}

/** `x y` of a point, as path data wants it. */
export function at(x: number, y: number): string {
  return `${coordinate(x)} ${coordinate(y)}`;
}

/** A straight line as path data. */
export function line(x1: number, y1: number, x2: number, y2: number): string {
  if (y1 === y2) return `M${at(x1, y1)}H${coordinate(x2)}`;
  if (x1 === x2) return `M${at(x1, y1)}V${coordinate(y2)}`;
  return `M${at(x1, y1)}L${at(x2, y2)}`;
}

/** A path of straight runs whose corners are rounded by `radius`, or by half the shorter run where that is less. */
export function roundedLine(points: readonly Point[], radius: number): string {
  let data = '';
  points.forEach((point, index) => {
    const before = points[index - 1];
    const after = points[index + 1];
    if (!before) data += `M${at(point.x, point.y)}`;
    else if (!after) data += `L${at(point.x, point.y)}`;
    else {
      const r = Math.min(radius, distance(before, point) / 2, distance(point, after) / 2);
      const from = towards(point, before, r);
      const to = towards(point, after, r);
      data += `L${at(from.x, from.y)}Q${at(point.x, point.y)} ${at(to.x, to.y)}`;
    }
  });
  return data;
}

/** Straight from one point to another, in units of the drawing. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** The point `length` away from `from` on the way to `to`. */
export function towards(from: Point, to: Point, length: number): Point {
  const share = length / distance(from, to);
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}

/** What a picture is called and how large it is. */
export interface Frame {
  /** Prefix of every id in the picture; unique on the page. */
  id: string;
  /** Which drawing, as a class: `ladder`, `circuit`, `tree`; further classes after a space. */
  kind: string;
  /** Name of the picture, read out first. */
  title: string;
  /** The whole picture in words, for those who do not see it. */
  description: string;
  width: number;
  height: number;
}

/** A complete `<svg>` element around a body. Its styles are in drawings.css and in the file of its kind. */
export function picture(frame: Frame, body: string): string {
  const { id, kind, title, description } = frame;
  const width = coordinate(frame.width);
  const height = coordinate(frame.height);
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" class="drawing drawing-${kind}" id="${id}" viewBox="0 0 ${width} ${height}" ` +
    `width="${width}" height="${height}" role="img" aria-labelledby="${id}-title ${id}-description">` +
    `<title id="${id}-title">${escapeText(title)}</title>` +
    `<desc id="${id}-description">${escapeText(description)}</desc>${body}</svg>`
  );
}
