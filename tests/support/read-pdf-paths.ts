import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** The box round one path on a printed page, millimetres from the lower left corner of the paper. */
export type PrintedBox = {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
};

/** One page as it leaves the printer. */
export type PrintedPage = {
  readonly width: number;
  readonly height: number;
  readonly paths: readonly PrintedBox[];
  readonly text: string;
};

type Matrix = readonly [number, number, number, number, number, number];

/** A point of a PDF is 1/72 inch (ISO 32000-1, 8.3.2.3). */
const POINT = 25.4 / 72;

/** Reads every path and all text of each page of a PDF, the current transformation followed through its stack. */
export async function readPdfPaths(bytes: Uint8Array): Promise<readonly PrintedPage[]> {
  const file = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages = await Promise.all(
    Array.from({ length: file.numPages }, async (_, index) => {
      const page = await file.getPage(index + 1);
      const { fnArray, argsArray } = await page.getOperatorList();
      const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
      const { items } = await page.getTextContent();
      return {
        width: (right - left) * POINT,
        height: (top - bottom) * POINT,
        paths: followPaths(fnArray, argsArray),
        text: items.map((item) => ('str' in item ? item.str : '')).join(' '),
      };
    }),
  );
  await file.cleanup();
  return pages;
}

function followPaths(codes: readonly number[], args: readonly unknown[]): readonly PrintedBox[] {
  const stack: Matrix[] = [];
  let now: Matrix = [1, 0, 0, 1, 0, 0];
  const boxes: PrintedBox[] = [];
  for (const [index, code] of codes.entries()) {
    const given = args[index];
    if (code === OPS.save) stack.push(now);
    if (code === OPS.restore) now = stack.pop() ?? now;
    if (code === OPS.transform) now = multiply(now, given as Matrix);
    // The reader gives a path with the box round it as its last argument.
    if (code === OPS.constructPath) {
      const box = (given as readonly unknown[])[2] as ArrayLike<number> | null;
      if (box !== null) boxes.push(placeBox(now, box));
    }
  }
  return boxes;
}

function multiply([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix {
  return [
    a * g + c * h,
    b * g + d * h,
    a * i + c * j,
    b * i + d * j,
    a * k + c * l + e,
    b * k + d * l + f,
  ];
}

function placeBox([a, b, c, d, e, f]: Matrix, box: ArrayLike<number>): PrintedBox {
  const [left = 0, low = 0, right = 0, high = 0] = Array.from(box);
  const corners = [
    [left, low],
    [right, high],
  ].map(([x = 0, y = 0]) => [a * x + c * y + e, b * x + d * y + f] as const);
  const xs = corners.map(([x]) => x * POINT);
  const ys = corners.map(([, y]) => y * POINT);
  return {
    x: Math.min(...xs),
    y: Math.min(...ys),
    width: Math.max(...xs) - Math.min(...xs),
    height: Math.max(...ys) - Math.min(...ys),
  };
}
