import { unsafeCSS } from 'lit';
import { SHARED_STYLES } from '../../look/shared-styles.ts';
import { TABLE_STYLES } from '../../look/table-styles.ts';

/** What the stash wears: the columns of its table beside what all tables of cloth share. */
export const stashStyles = unsafeCSS(`${SHARED_STYLES}
:host{--cells:minmax(7em,2fr) 6.6em minmax(4em,1fr) minmax(4em,1fr) 4em 36px}
.cloths:has(.print){--cells:minmax(7em,2fr) 6.6em minmax(5em,1fr) minmax(4em,1fr) minmax(4em,1fr) 4em 36px}
.picture{max-height:30em}
${TABLE_STYLES}`);
