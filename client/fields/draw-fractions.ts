import { render } from 'lit';
import { fractionChips } from './fraction-chips.ts';
import { setFraction } from './set-fraction.ts';

/** Draws the eighths beside an entry; one that is chosen is put in as if it had been typed. */
export function drawFractions(place: HTMLElement, input: HTMLInputElement): void {
  const choose = (sign: string) => {
    input.value = setFraction(input.value || input.placeholder, sign);
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  };
  render(fractionChips(choose), place);
}
