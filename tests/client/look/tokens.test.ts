import { describe, expect, test } from 'vitest';
import { TOKENS } from '../../../client/look/tokens.ts';

const rows = [...TOKENS.matchAll(/--ragbloom-([\w-]+): light-dark\((#\w{6}), (#\w{6})\)/g)];
const colors = Object.fromEntries(rows.map(([, name, light, dark]) => [name, { light, dark }]));

/** WCAG 2.2, relative luminance and contrast ratio. */
function luminance(color = ''): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(color.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string | undefined, other: string | undefined): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

describe('TOKENS', () => {
  test.each(['light', 'dark'] as const)(
    'TOKENS give text a contrast of 4.5 and more in the %s',
    (mode) => {
      for (const ground of ['ground', 'sheet']) {
        for (const text of ['ink', 'soft', 'madder', 'leaf']) {
          const ratio = contrast(colors[text]?.[mode], colors[ground]?.[mode]);
          expect(ratio, `${text} on ${ground}`).toBeGreaterThanOrEqual(4.5);
        }
      }
      const button = contrast(colors['on-madder']?.[mode], colors['madder']?.[mode]);
      expect(button).toBeGreaterThanOrEqual(4.5);
    },
  );

  test.each(['light', 'dark'] as const)(
    'TOKENS give the edge of a field a contrast of 3 and more in the %s',
    (mode) => {
      for (const ground of ['ground', 'sheet']) {
        expect(contrast(colors['edge']?.[mode], colors[ground]?.[mode])).toBeGreaterThanOrEqual(3);
      }
    },
  );
});
