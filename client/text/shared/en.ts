import { en as base } from '../base/en.ts';
import { en as faults } from '../faults/en.ts';

/** What every element says, in English. */
export const en = { ...base, faults };
