/** One fact beside the figures, under a name. */
export interface Fact {
  readonly name: string;
  readonly value: string;
}
