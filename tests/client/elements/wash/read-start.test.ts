import { describe, expect, test } from 'vitest';
import { exampleSwatches } from '../../../../client/elements/wash/example-swatches.ts';
import { readStart } from '../../../../client/elements/wash/read-start.ts';

const NOTHING = { address: '', kept: '', wash: '' };
const swatch = (name: string) =>
  `swatches.0.fabric=${name}&swatches.0.direction=length&swatches.0.before=10&swatches.0.after=9`;
const names = (start: Partial<typeof NOTHING>) =>
  readStart({ ...NOTHING, ...start }).cloths.map(({ fabric }) => fabric);

describe('readStart', () => {
  test('readStart with nothing at all begins with the invented shop', () => {
    expect(readStart(NOTHING).cloths).toEqual(exampleSwatches('in'));
    expect(readStart({ ...NOTHING, address: '?unit=cm' }).cloths).toEqual(exampleSwatches('cm'));
  });

  test('readStart takes the address before the device, the device before the host', () => {
    const all = { address: `?${swatch('Rose')}`, kept: swatch('Fern'), wash: swatch('Moss') };
    expect(names(all)).toEqual(['Rose']);
    expect(names({ ...all, address: '' })).toEqual(['Fern']);
    expect(names({ wash: all.wash })).toEqual(['Moss']);
  });

  test('readStart passes over what others append to an address, and tells a host of it', () => {
    expect(readStart({ ...NOTHING, address: '?ref=mail' }).hostFaults).toEqual([]);
    expect(readStart({ ...NOTHING, wash: 'ref=mail' }).hostFaults).toMatchObject([
      { code: 'unknown-key', path: ['ref'] },
    ]);
  });
});
