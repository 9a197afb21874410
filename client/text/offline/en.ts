/** What our pages say of themselves and the network, in English. */
export const en = {
  language: 'en',
  waiting: '',
  kept: 'Kept on this device: it opens without a signal too.',
  refused: 'This browser keeps no pages, so without a signal this one will not open.',
  silent: 'No signal. All of this works on without it.',
  newer: 'Kept on this device. A newer version waits for your next visit.',
};
