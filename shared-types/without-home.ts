/**
 * The text with `~` for the home folder: in paths of either system, in addresses, and in what JSON makes of them. The name of a
 * folder that only begins alike, or one further down, stays.
 */
export function withoutHome(text: string, homeFolder: string): string {
  const home = homeFolder.replace(/[/\\]+$/, '');
  if (home === '') return text;
  const forward = home.replaceAll('\\', '/');
  const forms = [home, forward, home.replaceAll('\\', '\\\\'), encodeURI(forward)];
  const found = new RegExp(
    `(?<![\\p{L}\\p{N}_.-])(?:${[...new Set(forms)].map(literal).join('|')})(?![\\p{L}\\p{N}_-])`,
    'giu',
  );
  return text.replace(found, '~');
}

function literal(text: string): string {
  return text.replace(/[\\^$.*+?()[\]{}|/]/g, String.raw`\$&`);
}
