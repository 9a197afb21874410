import { startOffline } from './start-offline.ts';

/* What every page of ours loads beside its element. */
void startOffline();
