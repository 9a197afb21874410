import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { answerWish, loadScenario } from './load-scenario.ts';

/** One answer as it stands under answers/: the body of the service, set in lines to be read. */
export function writeAnswer(file: string): string {
  return `${JSON.stringify(answerWish(file), null, 2)}\n`;
}

if (import.meta.main) {
  for (const { file } of loadScenario().wishes) {
    const path = fileURLToPath(new URL(`answers/${file}`, import.meta.url));
    writeFileSync(path, writeAnswer(file));
  }
}
