import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { describeElement, type ElementPromise, type Told } from './describe-element.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
/** Where it is told what every element has that stands on the base. */
const BASE = 'client/host/hosted-element.ts';

/**
 * Writes what editors and other tools are told of the elements, as the Custom Elements Manifest has it (schema 2.1.0,
 * https://github.com/webcomponents/custom-elements-manifest), from the docblocks of their classes.
 *
 * @param names what comes after `ragbloom-` in the tags.
 * @param folder of the package, with a slash at its end.
 */
export async function writeManifest(names: readonly string[], folder: string): Promise<string> {
  const read = (path: string) => readFile(`${root}${path}`, 'utf8');
  const base = describeElement(await read(BASE));
  const modules = names.map(async (name) => {
    const source = await read(`client/elements/${name}/${name}-element.ts`);
    const isOnBase = /extends (Asking|Light|Hosted)Element\b/.test(source);
    return writeModules(name, describeElement(source), {
      folder,
      base: isOnBase ? base : undefined,
    });
  });
  const manifest = { schemaVersion: '2.1.0', modules: (await Promise.all(modules)).flat() };
  return `${JSON.stringify(manifest, undefined, 2)}\n`;
}

/** The module that holds the class, and the one that registers it. */
function writeModules(
  name: string,
  own: ElementPromise,
  { folder, base }: { readonly folder: string; readonly base: ElementPromise | undefined },
) {
  const tagName = `ragbloom-${name}`;
  const path = `${folder}classes/${name}.js`;
  const join = (kind: 'attributes' | 'fields'): readonly Told[] => {
    const mine = own[kind].map((one) => one.name);
    return [...own[kind], ...(base?.[kind] ?? []).filter((one) => !mine.includes(one.name))];
  };
  const declaration = {
    ...{
      kind: 'class',
      customElement: true,
      name: own.name,
      tagName,
      description: own.description,
    },
    attributes: join('attributes'),
    members: join('fields').map((field) => ({ kind: 'field', ...field })),
    events: own.events.map((event) => ({ ...event, type: typeOf(event) })),
    slots: own.slots.map((slot) => ({ ...slot, name: slot.name === 'default' ? '' : slot.name })),
    cssParts: own.parts.map((part) => ({ name: part.name })),
    cssProperties: own.tokens,
  };
  const kind = 'javascript-module';
  const definition = { name: own.name, module: path };
  return [
    {
      ...{ kind, path, declarations: [declaration] },
      exports: [{ kind: 'js', name: own.name, declaration: definition }],
    },
    {
      ...{ kind, path: `${folder}elements/${name}.js`, declarations: [] },
      exports: [{ kind: 'custom-element-definition', name: tagName, declaration: definition }],
    },
  ];
}

function typeOf({ description }: Told) {
  const detail = /`detail` is an? `(\w+)`/.exec(description)?.[1];
  return { text: detail === undefined ? 'CustomEvent' : `CustomEvent<${detail}>` };
}
