/** What a worker says about the order it was sent. */
export type WorkerReport =
  | { readonly as: 'under-way'; readonly share: number }
  /** The output of the kind of job that was ordered. */
  | { readonly as: 'done'; readonly output: unknown };
