/**
 * Version of the reckoning (semantic versioning). The same engine and the same input give the
 * same answer for ever, so any change of a figure or a text in an answer raises it.
 */
export const ENGINE = '1.0.0';
