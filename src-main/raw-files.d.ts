// Text files that the bundler inlines, so that the built app needs no folder beside it.
declare module '*.sql?raw' {
  const text: string;
  export default text;
}
declare module '*.csv?raw' {
  const text: string;
  export default text;
}
