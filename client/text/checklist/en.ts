/** What the list of the work says beside its steps, in English. */
export const en = {
  title: 'The work',
  done: (done: number, all: number) => `${done} of ${all} done`,
  left: (time: string) => `about ${time} left`,
  row: (name: string) => `Row ${name}`,
  focus: 'Step by step',
  handOut: 'Hand-out for a class',
  missing: 'That part could not be fetched. Try again when you are connected.',
};
