/** How long a finger rests before it holds, in milliseconds. */
const LONG = 500;
/** How far it may slip meanwhile, CSS pixels. */
const SLIP = 8;

/**
 * Tells when a finger rests on a block for half a second; the tap that would follow is swallowed. Holding is for fingers
 * alone: a mouse has the mode for pins, and so has everybody else.
 */
export function watchHold(down: PointerEvent, held: () => void): void {
  const { target, pointerType, clientX, clientY } = down;
  if (pointerType !== 'touch' || target === null) return;
  const end = new AbortController();
  const listen = { signal: end.signal };
  const timer = setTimeout(() => {
    end.abort();
    swallowTap(target);
    held();
  }, LONG);
  end.signal.addEventListener('abort', () => clearTimeout(timer));
  const move = (event: Event) => {
    const { clientX: x, clientY: y } = event as PointerEvent;
    if (Math.hypot(x - clientX, y - clientY) > SLIP) end.abort();
  };
  target.addEventListener('pointermove', move, listen);
  for (const name of ['pointerup', 'pointercancel']) {
    target.addEventListener(name, () => end.abort(), listen);
  }
}

/** However long the finger rests on: until the tap that its lifting makes, or some time after, or another touch. */
function swallowTap(target: EventTarget): void {
  const end = new AbortController();
  const listen = { signal: end.signal };
  const swallow = (event: Event) => {
    event.stopPropagation();
    end.abort();
  };
  target.addEventListener('click', swallow, listen);
  target.addEventListener('pointerdown', () => end.abort(), listen);
  for (const name of ['pointerup', 'pointercancel']) {
    target.addEventListener(name, () => setTimeout(() => end.abort(), LONG), listen);
  }
}
