import type { Draft } from '../../data/draft.ts';
import { findBlank } from '../../data/find-blank.ts';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import { loadPlan } from '../../data/load-plan.ts';
import { REQUEST_KEYS } from '../../data/names.ts';
import type { OnDevice } from '../../data/on-device.ts';
import type { Errand } from '../../host/errand.ts';
import { completeDraft } from './plan-state.ts';

/** A whole plan for a wish, asked of `/v1/plan`. */
export const planErrand: Errand<Draft, ShownPlan, OnDevice> = {
  name: 'ragbloom-plan',
  keys: REQUEST_KEYS,
  complete: completeDraft,
  findBlank,
  load: loadPlan,
};
