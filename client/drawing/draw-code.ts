import { generate } from 'lean-qr/nano';

/** A code as one outline, in modules: black where the outline is, white around it. */
export interface DrawnCode {
  /** Data of an SVG path. */
  readonly path: string;
  /** Width and height, the quiet zone of four modules included (ISO/IEC 18004). */
  readonly side: number;
}

const QUIET = 4;

/**
 * Draws a text as a QR code.
 *
 * @returns nothing where it is too long for one.
 */
export function drawCode(text: string): DrawnCode | undefined {
  try {
    const code = generate(text);
    const modules = Array.from({ length: code.size }, (_, at) => at);
    const path = modules.flatMap((y) =>
      modules.filter((x) => code.get(x, y)).map((x) => `M${x + QUIET} ${y + QUIET}h1v1h-1z`),
    );
    return { path: path.join(''), side: code.size + 2 * QUIET };
  } catch {
    return undefined;
  }
}
