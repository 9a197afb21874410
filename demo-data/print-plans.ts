import { answerWish, loadScenario } from './load-scenario.ts';
import { writePlanSheet } from './write-plan-sheet.ts';

/** The plans of all wishes of the scenario, one after the other. */
export function printPlans(): string {
  const shop = loadScenario();
  const sheets = shop.wishes.map((wish) =>
    writePlanSheet({ wish, answer: answerWish(wish.file), shop }),
  );
  const note = 'An invented scenario: place, shop, people and cloth do not exist.';
  return [note, ...sheets].join('\n\n\n');
}

if (import.meta.main) console.log(printPlans());
