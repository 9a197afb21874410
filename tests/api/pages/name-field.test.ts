import { describe, expect, test } from 'vitest';
import { SIZES } from '#core/tables/sizes.ts';
import { nameField } from '../../../api/pages/name-field.ts';
import { listPairs } from '../../../api/pages/split-query.ts';
import { VIEWS } from '../../../api/pages/views.ts';

describe('nameField', () => {
  test('counts the places of lists from one', () => {
    expect(nameField('fabrics.1.pieces.0.count')?.name).toBe('Cloth 2, piece 1, how many');
  });
  test('offers every named size once', () => {
    const choices = nameField('target.size')?.choices ?? [];
    expect(new Set(choices)).toEqual(new Set(SIZES.map(({ name }) => name)));
    expect(choices.length).toBe(new Set(choices).size);
  });
  test('has no field for what it does not know', () => {
    expect(nameField('__proto__')).toBeUndefined();
    expect(nameField('constructor')).toBeUndefined();
  });
  test.each(VIEWS)(
    'has a field for all that $name always shows, and for some of its example',
    (view) => {
      expect(view.always.filter((path) => nameField(path) === undefined)).toEqual([]);
      const shown = listPairs(view.example).filter(([path]) => nameField(path) !== undefined);
      expect(shown.length).toBeGreaterThan(0);
    },
  );
});
