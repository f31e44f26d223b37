/** What is wrong with a file, as the end of a sentence; thrown while reading and turned into an outcome by the intake. */
export class Unreadable extends Error {}
