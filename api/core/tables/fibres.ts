import type { FabricName, Fibre } from '../contract.ts';

const only = (fibre: string): readonly Fibre[] => [{ fibre, percent: 100 }];

/** What cloth of each kind is usually made of, by mass. Common practice, no source: the bolt tells. */
const FIBRES: Readonly<Record<FabricName, readonly Fibre[]>> = {
  'quilting-cotton': only('cotton'),
  flannel: only('cotton'),
  denim: only('cotton'),
  plush: only('polyester'),
  fleece: only('polyester'),
  'linen-cotton': [
    { fibre: 'linen', percent: 55 },
    { fibre: 'cotton', percent: 45 },
  ],
  'cotton-batting': only('cotton'),
  'blend-batting': [
    { fibre: 'cotton', percent: 80 },
    { fibre: 'polyester', percent: 20 },
  ],
  'polyester-batting': only('polyester'),
  'bamboo-batting': [
    { fibre: 'rayon made from bamboo', percent: 50 },
    { fibre: 'cotton', percent: 50 },
  ],
};

/**
 * The usual fibres of a fabric, in percent by mass.
 *
 * @example
 * usualFibres('flannel') // => [{ fibre: 'cotton', percent: 100 }]
 */
export function usualFibres(fabric: FabricName): readonly Fibre[] {
  return FIBRES[fabric];
}
