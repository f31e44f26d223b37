/** What an input of type number tells of itself. */
export type NumberInput = Pick<HTMLInputElement, 'value'> & {
  readonly validity: Pick<ValidityState, 'badInput'>;
};

/** Whether the rider left nothing in the field; what is no number at all has no value either, but is bad input. */
export function isEmptied({ value, validity }: NumberInput): boolean {
  return value === '' && !validity.badInput;
}
