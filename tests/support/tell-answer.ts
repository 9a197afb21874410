import { ENDPOINTS } from '../../api/app.ts';
import { askView, type Seen } from '../../api/pages/ask-view.ts';
import type { Row, Telling } from '../../api/pages/telling.ts';
import { VIEWS, type View } from '../../api/pages/views.ts';

/** The view of a name; one that does not exist is an error. */
export function findView(name: string): View {
  const view = VIEWS.find((one) => one.name === name);
  if (view === undefined) throw new Error(`There is no view ${name}.`);
  return view;
}

/** A view asked as a frame asks it. */
export function see(name: string, query = ''): Seen {
  return askView(findView(name), ENDPOINTS, query, { isLenient: false });
}

/** What is told of an answer that there is. */
export function tell(name: string, query = ''): Telling {
  const seen = see(name, query);
  if (!seen.ok) throw new Error(JSON.stringify(seen.faults));
  return seen.telling;
}

/** The value of one line, whichever table it stands in. */
export function findRow({ tables }: Telling, name: string): string | undefined {
  return tables.flatMap(({ rows }): readonly Row[] => rows).find(([head]) => head === name)?.[1];
}
