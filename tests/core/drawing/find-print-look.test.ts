import { describe, expect, test } from 'vitest';
import { findPrintLook } from '#core/drawing/find-print-look.ts';

const GROUNDS = Array.from({ length: 9 }, (_, print) => findPrintLook(print).ground);

/**
 * What each kind of colour vision makes of linear light: Machado, Oliveira and Fernandes, "A
 * Physiologically-based Model for Simulation of Color Vision Deficiency", 2009, severity 1 (from memory).
 */
const VISIONS = {
  usual: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
} as const;

/** The transfer curve of sRGB, IEC 61966-2-1. */
function readLinear(color: string): readonly number[] {
  return [1, 3, 5].map((at) => {
    const part = Number.parseInt(color.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
}

/** CIELAB of linear sRGB under D65: CIE 15. */
function toLab([red = 0, green = 0, blue = 0]: readonly number[]): readonly number[] {
  const x = (0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.95047;
  const y = 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  const z = (0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.08883;
  const [fx = 0, fy = 0, fz = 0] = [x, y, z].map((part) =>
    part > 216 / 24389 ? Math.cbrt(part) : ((24389 / 27) * part + 16) / 116,
  );
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

function seeAs(color: string, vision: readonly (readonly number[])[]): readonly number[] {
  const light = readLinear(color);
  const seen = vision.map((row) =>
    row.reduce((sum, share, at) => sum + share * (light[at] ?? 0), 0),
  );
  return toLab(seen.map((part) => Math.min(1, Math.max(0, part))));
}

describe('findPrintLook', () => {
  test.each(Object.entries(VISIONS))(
    'findPrintLook gives nine grounds that stay apart for %s vision',
    (_, vision) => {
      const seen = GROUNDS.map((ground) => seeAs(ground, vision));
      const gaps = seen.flatMap((one, index) =>
        seen
          .slice(0, index)
          .map((other) => Math.hypot(...one.map((part, at) => part - (other[at] ?? 0)))),
      );
      // A difference of 2.3 in CIELAB is just noticeable (Mahy and others, 1994; from memory): five times that.
      expect(Math.min(...gaps)).toBeGreaterThan(11);
    },
  );

  test('findPrintLook gives no two of 26 prints the same cloth', () => {
    const looks = Array.from({ length: 26 }, (_, print) => findPrintLook(print));
    const told = looks.map(({ ground, motif }) => `${ground} ${motif}`);
    expect(new Set(told).size).toBe(26);
  });

  test('findPrintLook(print, color) takes the color and a figure that reads on it', () => {
    expect(findPrintLook(0, '#000000')).toMatchObject({ ground: '#000000', figure: '#fbf6ea' });
    expect(findPrintLook(0, '#ffffff')).toMatchObject({ ground: '#ffffff', figure: '#1d2433' });
  });
});
