import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { startOffline } from '../../../client/offline/start-offline.ts';
import { en } from '../../../client/text/offline/en.ts';

/** A registration that tells of its workers as a browser does. */
function makeRegistration(states: { active?: boolean; waiting?: boolean }) {
  const target = new EventTarget();
  const worker = (isThere = false) => (isThere ? new EventTarget() : null);
  const workers = { active: worker(states.active), waiting: worker(states.waiting) };
  return Object.assign(target, { ...workers, installing: new EventTarget() });
}

function stubWorkers(register: () => Promise<unknown>): void {
  const ready = new Promise(() => undefined);
  vi.spyOn(navigator, 'serviceWorker', 'get').mockReturnValue({
    register,
    ready,
  } as unknown as ServiceWorkerContainer);
}

async function readState(): Promise<string> {
  void startOffline();
  await new Promise((done) => setTimeout(done, 20));
  return document.querySelector('[data-offline]')?.textContent ?? '';
}

describe('startOffline', () => {
  beforeEach(() => {
    document.body.innerHTML = '<p data-offline></p>';
    localStorage.clear();
  });
  afterEach(() => vi.restoreAllMocks());

  test('startOffline registers the one worker, and says that the page is kept', async () => {
    const register = vi.fn(async () => makeRegistration({ active: true }));
    stubWorkers(register);
    expect(await readState()).toBe(en.kept);
    expect(register.mock.calls.map(String)).toEqual(['/service-worker.js']);
  });

  test('startOffline says that a newer version waits, and that a browser keeps no pages', async () => {
    stubWorkers(async () => makeRegistration({ active: true, waiting: true }));
    expect(await readState()).toBe(en.newer);
    stubWorkers(() => Promise.reject(new DOMException('No', 'SecurityError')));
    expect(await readState()).toBe(en.refused);
    vi.spyOn(navigator, 'serviceWorker', 'get').mockReturnValue(
      undefined as unknown as ServiceWorkerContainer,
    );
    expect(await readState()).toBe(en.refused);
  });

  test('startOffline follows a version that is already on its way', async () => {
    const registration = makeRegistration({ active: true });
    stubWorkers(async () => registration);
    expect(await readState()).toBe(en.kept);
    registration.waiting = new EventTarget();
    registration.installing.dispatchEvent(new Event('statechange'));
    expect(document.querySelector('[data-offline]')?.textContent).toBe(en.newer);
  });

  test('startOffline says when there is no signal, and when there is one again', async () => {
    stubWorkers(async () => makeRegistration({ active: true }));
    const online = vi.spyOn(navigator, 'onLine', 'get').mockReturnValue(false);
    expect(await readState()).toBe(en.silent);
    online.mockReturnValue(true);
    dispatchEvent(new Event('online'));
    expect(document.querySelector('[data-offline]')?.textContent).toBe(en.kept);
  });

  test('startOffline keeps the last plan of an element that may remember, and of no other', async () => {
    stubWorkers(async () => makeRegistration({ active: true }));
    await readState();
    const detail = { answer: { links: { page: '/?target.size=lap' } } };
    const tell = (attributes: string) => {
      document.body.innerHTML = `<div ${attributes}></div>`;
      const told = new CustomEvent('ragbloom-plan', { detail, bubbles: true });
      document.body.firstElementChild?.dispatchEvent(told);
      return localStorage.getItem('ragbloom-draft last-plan');
    };
    expect(tell('')).toBeNull();
    expect(tell('remember embedded')).toBeNull();
    expect(tell('remember')).toBe('target.size=lap');
  });
});
