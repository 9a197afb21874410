import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Ajv } from 'ajv';
import { beforeAll, describe, expect, test } from 'vitest';
import { ELEMENTS } from '../../../client/build/budgets.ts';
import { writeManifest } from '../../../client/build/write-manifest.ts';
import { BASE_FILES, readPractice, readPromise } from '../../structure/element-contract.ts';
import { readText } from '../../structure/source-tree.ts';

interface Named {
  readonly name: string;
}
interface Declaration extends Named {
  readonly tagName: string;
  readonly attributes: readonly Named[];
  readonly members: readonly Named[];
  readonly events: readonly (Named & { readonly type: { readonly text: string } })[];
  readonly slots: readonly Named[];
  readonly cssParts: readonly Named[];
  readonly cssProperties: readonly Named[];
}
interface Manifest {
  readonly modules: readonly { readonly declarations: readonly Declaration[] }[];
}

describe('writeManifest', () => {
  let manifest: Manifest;
  beforeAll(async () => {
    manifest = JSON.parse(await writeManifest(Object.keys(ELEMENTS), 'package/')) as Manifest;
  });

  test('writeManifest(names, folder) is valid by the published schema', () => {
    const schema = fileURLToPath(import.meta.resolve('custom-elements-manifest/schema.json'));
    const ajv = new Ajv({ strict: false, allErrors: true });
    const validate = ajv.compile(JSON.parse(readFileSync(schema, 'utf8')) as object);
    validate(manifest);
    expect(validate.errors).toBeNull();
    expect(validate({ ...manifest, modules: [{ kind: 'unheard-of' }] })).toBe(false);
  });

  test.each(Object.keys(ELEMENTS))(
    'writeManifest(names, folder) tells of %s what its code has',
    (name) => {
      const source = readText(`client/elements/${name}/${name}-element.ts`);
      const own = readPromise(source);
      const isOnBase = /extends (Asking|Light|Hosted)Element\b/.test(source);
      const base = isOnBase
        ? BASE_FILES.flatMap((file) => readPractice(readText(file), '').attributes)
        : [];
      const told = manifest.modules
        .flatMap(({ declarations }) => declarations)
        .find(({ tagName }) => tagName === `ragbloom-${name}`);
      const sort = (list: readonly Named[] = []) => list.map((one) => one.name).toSorted();
      expect(sort([...(told?.attributes ?? []), ...(told?.members ?? [])])).toEqual(
        [...new Set([...own.attributes, ...base])].toSorted(),
      );
      expect(sort(told?.events)).toEqual(own.events);
      expect(
        sort(told?.slots)
          .map((slot) => slot || 'default')
          .toSorted(),
      ).toEqual(own.slots);
      expect(sort(told?.cssParts)).toEqual(own.parts);
      expect(sort(told?.cssProperties)).toEqual(own.tokens);
      const [event] = told?.events ?? [];
      expect(event?.type.text).toBe(`CustomEvent<${told?.name.replace('Element', 'Detail')}>`);
    },
  );
});
