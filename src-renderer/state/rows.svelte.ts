interface Named {
  readonly id: string;
}

/** The rows of one list of the catalogue, in the order the workbench gave them. */
export class Rows<Row extends Named> {
  all = $state.raw<readonly Row[]>([]);

  fill(rows: readonly Row[]): void {
    this.all = rows;
  }

  find(id: string): Row | undefined {
    return this.all.find((row) => row.id === id);
  }

  /** Replaces the row of this id, or puts it at `place` (the end, unless said otherwise). */
  put(row: Row, place = this.all.length): void {
    this.all =
      this.find(row.id) === undefined
        ? this.all.toSpliced(place, 0, row)
        : this.all.map((each) => (each.id === row.id ? row : each));
  }

  /** Takes a row out and says where it stood, for putting it back. */
  drop(id: string): number {
    const place = this.all.findIndex((row) => row.id === id);
    this.all = this.all.filter((row) => row.id !== id);
    return place;
  }
}
