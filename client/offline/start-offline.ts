import { keepDraft } from '../data/draft-store.ts';
import { chooseLanguage, loadText } from '../text/languages.ts';
import { type OfflineWords, offlineSource } from '../text/offline/source.ts';

/** How things stand with this page and the network. */
export type OfflineState = 'waiting' | 'kept' | 'refused' | 'silent' | 'newer';

/** Under which the last plan is kept on this device, for the counter. */
const LAST_PLAN = 'last-plan';
const WORKER = '/service-worker.js';

/**
 * Has the browser keep this page for when there is no signal, says how that stands where the page has a place for it
 * (`data-offline`), and keeps the last plan for the counter.
 */
export async function startOffline(): Promise<void> {
  document.addEventListener('ragbloom-plan', keepPlan);
  const words = await loadText(offlineSource, chooseLanguage([document.documentElement.lang]));
  const tell = (state: OfflineState) => tellState(words, state);
  const registration = await register();
  const settle = () => tell(findState(registration));
  for (const name of ['online', 'offline']) addEventListener(name, settle);
  const follow = () => registration?.installing?.addEventListener('statechange', settle);
  registration?.addEventListener('updatefound', follow);
  follow();
  settle();
  if (registration === undefined) return;
  await navigator.serviceWorker.ready;
  settle();
}

function findState(registration: ServiceWorkerRegistration | undefined): OfflineState {
  if (!navigator.onLine) return 'silent';
  if (registration === undefined) return 'refused';
  if (registration.waiting && registration.active) return 'newer';
  return registration.active ? 'kept' : 'waiting';
}

/** Nothing where the browser has no such thing, or refuses it to this page. */
async function register(): Promise<ServiceWorkerRegistration | undefined> {
  try {
    return await navigator.serviceWorker.register(trust(WORKER));
  } catch {
    return undefined;
  }
}

/** Where the page’s policy asks for it, the one address is vouched for. */
function trust(address: string): string {
  const { trustedTypes } = globalThis as unknown as { trustedTypes?: TrustedTypes };
  const policy = trustedTypes?.createPolicy('ragbloom-offline', {
    createScriptURL: () => WORKER,
  });
  return policy?.createScriptURL(address) ?? address;
}

/** What of the browser’s trusted types is used; they are not in the types of pages. */
interface TrustedTypes {
  readonly createPolicy: (
    name: string,
    rules: { readonly createScriptURL: (address: string) => string },
  ) => { readonly createScriptURL: (address: string) => string };
}

function tellState(words: OfflineWords, state: OfflineState): void {
  for (const place of document.querySelectorAll('[data-offline]')) {
    place.textContent = words[state];
  }
}

function keepPlan(event: Event): void {
  const { target } = event;
  const { answer } = (event as CustomEvent<{ answer?: { links?: { page?: string } } }>).detail;
  const page = answer?.links?.page ?? '';
  const mayKeep =
    target instanceof Element &&
    target.hasAttribute('remember') &&
    !target.hasAttribute('embedded');
  if (mayKeep && page.includes('?')) keepDraft(LAST_PLAN, page.slice(page.indexOf('?') + 1));
}
