import { describe, expect, test } from 'vitest';
import { labelKit } from '#core/kits/label-kit.ts';

const only = (fibre: string) => [{ fibre, percent: 100 }];
const top = { role: 'top' as const, mass: 140, fibres: only('cotton') };
const backing = { role: 'backing' as const, mass: 260, fibres: only('polyester') };

describe('labelKit', () => {
  test('labelKit tells a middle layer apart as filling (16 CFR 303.22)', () => {
    // The rule's own form: "Covering: 100% Rayon / Filling: 100% Cotton."
    const layers = [
      { ...top, fibres: only('rayon') },
      { role: 'middle' as const, mass: 900, fibres: only('cotton') },
      { ...backing, fibres: only('rayon') },
    ];
    expect(labelKit(layers)).toMatchObject({
      covering: only('rayon'),
      filling: only('cotton'),
      content: 'Covering: 100% rayon. Filling: 100% cotton.',
    });
  });

  test('labelKit of two layers is one line with no thread in it (15 USC 70j)', () => {
    const label = labelKit([top, backing]);
    expect(label.content).toBe('65% polyester, 35% cotton');
    expect(label).not.toHaveProperty('filling');
  });

  test('labelKit lets nobody iron polyester, wherever it lies', () => {
    expect(labelKit([top, backing]).care).toContain('Do not iron.');
    expect(labelKit([top, { ...top, role: 'backing' }]).care).toContain('Do not iron the fringe.');
  });
});
