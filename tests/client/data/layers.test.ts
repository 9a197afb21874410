import { describe, expect, test } from 'vitest';
import type { Draft } from '../../../client/data/draft.ts';
import { findLayer, ROLES, setFabric } from '../../../client/data/layers.ts';

const TWO: Draft = {
  'layers.0.role': 'top',
  'layers.1.role': 'backing',
  'layers.1.prewashed': 'true',
};

describe('findLayer', () => {
  test('findLayer(draft, role) finds each layer, or the first free place', () => {
    expect(ROLES.map((role) => findLayer(TWO, role))).toEqual([0, 2, 1]);
    expect(findLayer({}, 'top')).toBe(0);
  });
});

describe('setFabric', () => {
  test('setFabric puts a middle in and takes it out again without a trace', () => {
    const three = setFabric(TWO, 'middle', 'flannel');
    expect(three).toEqual({
      'layers.0.role': 'top',
      'layers.1.role': 'middle',
      'layers.1.fabric': 'flannel',
      'layers.2.role': 'backing',
      'layers.2.prewashed': 'true',
    });
    expect(setFabric(three, 'middle', '')).toEqual(TWO);
  });

  test('setFabric takes every middle out where there are two', () => {
    const draft: Draft = {
      'layers.0.role': 'top',
      'layers.1.role': 'middle',
      'layers.1.fabric': 'flannel',
      'layers.2.role': 'middle',
      'layers.2.fabric': 'cotton-batting',
      'layers.3.role': 'backing',
      'layers.3.prewashed': 'true',
    };
    expect(setFabric(draft, 'middle', '')).toEqual(TWO);
  });

  test('setFabric moves the layers after the one that goes', () => {
    const draft: Draft = {
      'layers.0.role': 'top',
      'layers.1.role': 'middle',
      'layers.1.fabric': 'flannel',
      'layers.2.role': 'backing',
      'layers.2.width': '60',
    };
    expect(setFabric(draft, 'middle', '')).toEqual({
      'layers.0.role': 'top',
      'layers.1.role': 'backing',
      'layers.1.width': '60',
    });
  });

  test('setFabric forgets what was known of the old cloth and keeps what is true of the bolt', () => {
    const draft: Draft = {
      'layers.0.role': 'top',
      'layers.0.fabric': 'flannel',
      'layers.0.gsm': '180',
      'layers.0.shrink.length': '5',
      'layers.0.shrink.width': '3',
      'layers.0.width': '44',
      'layers.1.role': 'backing',
      'layers.1.gsm': '170',
    };
    expect(setFabric(draft, 'top', 'denim')).toEqual({
      'layers.0.role': 'top',
      'layers.0.fabric': 'denim',
      'layers.0.width': '44',
      'layers.1.role': 'backing',
      'layers.1.gsm': '170',
    });
  });
});
