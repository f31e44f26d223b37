/** How every id of the invented demo begins; those of a rider's own are random. */
const demoBeginning = 'demo-';

export function isOfDemo({ id }: { readonly id: string }): boolean {
  return id.startsWith(demoBeginning);
}
