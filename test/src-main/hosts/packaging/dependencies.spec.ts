import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const project = resolve(import.meta.dirname, '../../../..');

interface OwnPackage {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
  readonly allowScripts: Readonly<Record<string, boolean>>;
}

interface Lock {
  readonly packages: Readonly<Record<string, { readonly hasInstallScript?: boolean }>>;
}

const read = (name: string): string => readFileSync(join(project, name), 'utf8');
const own = JSON.parse(read('package.json')) as OwnPackage;
const lock = JSON.parse(read('package-lock.json')) as Lock;
const named = Object.keys({ ...own.dependencies, ...own.devDependencies });

describe('the dependencies', () => {
  it('are pinned to one version each', () => {
    const versions = Object.values({ ...own.dependencies, ...own.devDependencies });
    expect(versions.filter((version) => !/^\d+\.\d+\.\d+$/u.test(version))).toEqual([]);
  });

  it('are named in DEVELOPERS.md with their reason, types of others aside', () => {
    const section = /## Dependencies.*?(?=\n\*\*Licences)/su.exec(read('DEVELOPERS.md'))?.[0] ?? '';
    const words = new Set(section.split(/[\s,|`()]+/u));
    expect(named.filter((name) => !name.startsWith('@types/') && !words.has(name))).toEqual([]);
  });

  it('run no script on installing that nobody judged, and none but node’s own', () => {
    const scripted = Object.entries(lock.packages)
      .filter(([, { hasInstallScript }]) => hasInstallScript)
      .map(([folder]) => folder.split('node_modules/').at(-1)!);
    expect(scripted.filter((name) => !(name in own.allowScripts))).toEqual([]);
    expect(Object.keys(own.allowScripts).filter((name) => own.allowScripts[name])).toEqual(['node']);
  });
});
