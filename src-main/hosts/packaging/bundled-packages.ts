import type { Plugin } from 'vite';

/** Lies in the folder of each bundle, beside what it tells of; it is not packaged itself. */
export const bundledListName = 'bundled-packages.json';

const packagesFolder = 'node_modules/';

/** `node_modules/name` of a file inside a package, with the packages around it; null of a file that is ours. */
function packageFolder(file: string): string | null {
  const path = file.replaceAll('\\', '/');
  const last = path.lastIndexOf(packagesFolder);
  if (last === -1) return null;
  const [first = '', second = ''] = path.slice(last + packagesFolder.length).split('/');
  const name = first.startsWith('@') ? `${first}/${second}` : first;
  return path.slice(path.indexOf(packagesFolder), last) + packagesFolder + name;
}

/** Has the bundler write down whose packages it put into a bundle: their licences ask to be shipped along. */
export function listBundledPackages(): Plugin {
  return {
    name: 'list-bundled-packages',
    generateBundle(_options, bundle) {
      const files = Object.values(bundle).flatMap((part) =>
        part.type === 'chunk' ? part.moduleIds : part.originalFileNames,
      );
      const folders = new Set(files.map(packageFolder).filter((folder) => folder !== null));
      this.emitFile({
        type: 'asset',
        fileName: bundledListName,
        source: JSON.stringify([...folders].toSorted(), null, 2),
      });
    },
  };
}
