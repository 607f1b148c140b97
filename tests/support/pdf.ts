import { inflateSync } from 'node:zlib';

/** Lengths in PDF's user space are points of 1/72 in (ISO 32000-1, 8.3.2.3); an inch is 25.4 mm. */
const mmPerPoint = 25.4 / 72;

/** A stroked path as it lies on the page, in mm from the page's far left corner. */
export interface DrawnPath {
  readonly leftMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  /** How many of its segments are Bézier curves, and how many are straight. */
  readonly curves: number;
  readonly lines: number;
  readonly closed: boolean;
}

export interface DrawnPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly stroked: readonly DrawnPath[];
  /** How many pieces of text are shown on it: none on an empty sheet. */
  readonly texts: number;
}

interface PdfObject {
  readonly dictionary: string;
  readonly stream: Buffer | undefined;
}

/**
 * The pages of a PDF and the paths stroked on them: enough of ISO 32000-1 to measure what a browser prints (objects,
 * packed into streams too, Flate compression, the path operators, the matrix and its stack, form XObjects).
 */
export function readPdf(bytes: Uint8Array): DrawnPage[] {
  const objects = objectsIn(Buffer.from(bytes));
  const pages = [...objects.values()].filter(({ dictionary }) => /\/Type\s*\/Page\b/.test(dictionary));
  return pages.map((page) => {
    const box = numbersIn(/\/MediaBox\s*\[([^\]]*)\]/.exec(page.dictionary)?.[1] ?? '');
    const [left = 0, bottom = 0, right = 0, top = 0] = box;
    const content = referencesIn(/\/Contents\s*(\[[^\]]*\]|\d+ 0 R)/.exec(page.dictionary)?.[1] ?? '')
      .map((id) => textOf(objects.get(id)))
      .join('\n');
    const onPage: Matrix = [mmPerPoint, 0, 0, -mmPerPoint, -left * mmPerPoint, top * mmPerPoint];
    const drawn: Drawn = { stroked: [], texts: 0 };
    draw(content, onPage, page, objects, drawn);
    return { widthMm: (right - left) * mmPerPoint, heightMm: (top - bottom) * mmPerPoint, ...drawn };
  });
}

function objectsIn(file: Buffer): Map<number, PdfObject> {
  const text = file.toString('latin1');
  const objects = new Map<number, PdfObject>();
  for (const match of text.matchAll(/(?:^|[\r\n])(\d+) 0 obj\b/g)) {
    const from = match.index + match[0].length;
    const end = text.indexOf('endobj', from);
    const body = text.slice(from, end);
    const start = /stream\r?\n/.exec(body);
    const close = body.lastIndexOf('endstream');
    const stream =
      start === null || close < 0
        ? undefined
        : file.subarray(from + start.index + start[0].length, from + close);
    objects.set(Number(match[1]), { dictionary: start === null ? body : body.slice(0, start.index), stream });
  }
  for (const packed of [...objects.values()]) {
    if (!/\/Type\s*\/ObjStm\b/.test(packed.dictionary)) continue;
    const body = textOf(packed);
    const first = Number(/\/First\s+(\d+)/.exec(packed.dictionary)?.[1]);
    // Pairs of an object's number and where it begins (7.5.7).
    const pairs = numbersIn(body.slice(0, first));
    for (let at = 0; at < pairs.length; at += 2) {
      const next = pairs[at + 3];
      const end = next === undefined ? undefined : first + next;
      const dictionary = body.slice(first + (pairs[at + 1] ?? 0), end);
      objects.set(pairs[at] ?? 0, { dictionary, stream: undefined });
    }
  }
  return objects;
}

function textOf(object: PdfObject | undefined): string {
  if (object?.stream === undefined) return '';
  return (/\/FlateDecode/.test(object.dictionary) ? inflateSync(object.stream) : object.stream).toString(
    'latin1',
  );
}

const numbersIn = (text: string): number[] => (text.match(/[-+]?\d*\.?\d+/g) ?? []).map(Number);
const referencesIn = (text: string): number[] =>
  [...text.matchAll(/(\d+) 0 R/g)].map((match) => Number(match[1]));

type Matrix = readonly [number, number, number, number, number, number];

/** `inner` first, then `outer` (ISO 32000-1, 8.3.4). */
const times = (inner: Matrix, outer: Matrix): Matrix => [
  inner[0] * outer[0] + inner[1] * outer[2],
  inner[0] * outer[1] + inner[1] * outer[3],
  inner[2] * outer[0] + inner[3] * outer[2],
  inner[2] * outer[1] + inner[3] * outer[3],
  inner[4] * outer[0] + inner[5] * outer[2] + outer[4],
  inner[4] * outer[1] + inner[5] * outer[3] + outer[5],
];

interface Drawn {
  readonly stroked: DrawnPath[];
  texts: number;
}

interface Subpath {
  readonly points: [number, number][];
  curves: number;
  lines: number;
  closed: boolean;
}

const strings = /\((?:\\.|[^\\()])*\)|<[0-9A-Fa-f\s]*>/g;

function draw(
  content: string,
  start: Matrix,
  owner: PdfObject,
  objects: ReadonlyMap<number, PdfObject>,
  into: Drawn,
): void {
  let matrix = start;
  const stack: Matrix[] = [];
  let path: Subpath[] = [];
  let operands: string[] = [];
  const at = (x: number, y: number): [number, number] => [
    x * matrix[0] + y * matrix[2] + matrix[4],
    x * matrix[1] + y * matrix[3] + matrix[5],
  ];
  const begin = (x: number, y: number) =>
    path.push({ points: [at(x, y)], curves: 0, lines: 0, closed: false });
  for (const token of content.replace(strings, ' () ').match(/[^\s[\]]+/g) ?? []) {
    if (/^[-+.\d]/.test(token) || token.startsWith('/') || token === '()') {
      operands.push(token);
      continue;
    }
    const given = operands.map(Number);
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = given;
    const last = path.at(-1);
    switch (token) {
      case 'q':
        stack.push(matrix);
        break;
      case 'Q':
        matrix = stack.pop() ?? matrix;
        break;
      case 'cm':
        matrix = times([a, b, c, d, e, f], matrix);
        break;
      case 'm':
        begin(a, b);
        break;
      case 'l':
        last?.points.push(at(a, b));
        if (last) last.lines += 1;
        break;
      case 'c':
        last?.points.push(...extremes(last.points.at(-1) ?? at(a, b), at(a, b), at(c, d), at(e, f)));
        if (last) last.curves += 1;
        break;
      case 'h':
        if (last) last.closed = true;
        break;
      case 're':
        begin(a, b);
        path.at(-1)?.points.push(at(a + c, b), at(a + c, b + d), at(a, b + d));
        break;
      case 'S':
      case 's':
      case 'B':
      case 'b':
        into.stroked.push(...path.map(boxOf));
        path = [];
        break;
      case 'f':
      case 'f*':
      case 'n':
        path = [];
        break;
      case 'Tj':
      case 'TJ':
        into.texts += 1;
        break;
      case 'Do': {
        const name = (operands[0] ?? '').slice(1);
        const id = Number(new RegExp(`/${name}\\s+(\\d+) 0 R`).exec(owner.dictionary)?.[1]);
        const form = objects.get(id);
        if (form !== undefined && /\/Subtype\s*\/Form/.test(form.dictionary)) {
          const own = numbersIn(/\/Matrix\s*\[([^\]]*)\]/.exec(form.dictionary)?.[1] ?? '1 0 0 1 0 0');
          draw(textOf(form), times(own as unknown as Matrix, matrix), form, objects, into);
        }
        break;
      }
      default:
        break;
    }
    operands = [];
  }
}

/** The end of a cubic Bézier curve and the points where it turns, so that a box around them holds all of it. */
function extremes(...[p0, p1, p2, p3]: [number, number][]): [number, number][] {
  if (p0 === undefined || p1 === undefined || p2 === undefined || p3 === undefined) return [];
  const on = (t: number): [number, number] => {
    const mix = (axis: 0 | 1) =>
      (1 - t) ** 3 * p0[axis] +
      3 * (1 - t) ** 2 * t * p1[axis] +
      3 * (1 - t) * t ** 2 * p2[axis] +
      t ** 3 * p3[axis];
    return [mix(0), mix(1)];
  };
  return Array.from({ length: 64 }, (_, step) => on((step + 1) / 64));
}

function boxOf({ points, curves, lines, closed }: Subpath): DrawnPath {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return {
    leftMm: left,
    topMm: top,
    widthMm: Math.max(...xs) - left,
    heightMm: Math.max(...ys) - top,
    curves,
    lines,
    closed,
  };
}
