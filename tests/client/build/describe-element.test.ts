import { describe, expect, test } from 'vitest';
import { describeElement } from '../../../client/build/describe-element.ts';

const source = `import { a } from 'a';

/** Something else. */
const b = 1;

/**
 * A plan. It is
 * long.
 *
 * Attributes and properties, beside others
 * - \`preset\`: what to ask first
 *   of all.
 * - \`request\` (property only): the same as an object.
 *
 * Events
 * - \`ragbloom-a\` (bubbles, composed): it is there; \`detail\` is a \`Detail\`.
 *
 * Slots
 * - default: what shows first.
 *
 * Parts: \`face\`, \`edge\`.
 *
 * Custom properties: \`--ragbloom-ink\`, \`--ragbloom-display\` (type).
 */
export class AElement extends B {}
`;

describe('describeElement', () => {
  const told = describeElement(source);

  test('describeElement(source) tells the class and what it is', () => {
    expect([told.name, told.description]).toEqual(['AElement', 'A plan. It is long.']);
  });

  test('describeElement(source) tells attributes apart from properties that have none', () => {
    expect(told.attributes).toEqual([{ name: 'preset', description: 'what to ask first of all.' }]);
    expect(told.fields).toEqual([{ name: 'request', description: 'the same as an object.' }]);
  });

  test('describeElement(source) tells events, slots, parts and custom properties', () => {
    expect(told.events[0]?.description).toBe('it is there; `detail` is a `Detail`.');
    expect(told.slots).toEqual([{ name: 'default', description: 'what shows first.' }]);
    expect(told.parts.map(({ name }) => name)).toEqual(['face', 'edge']);
    expect(told.tokens).toEqual([
      { name: '--ragbloom-ink', description: '' },
      { name: '--ragbloom-display', description: 'type' },
    ]);
  });

  test('describeElement(source) tells nothing of a file without a class', () => {
    expect(describeElement('const a = 1;')).toMatchObject({ name: '', attributes: [], events: [] });
  });
});
