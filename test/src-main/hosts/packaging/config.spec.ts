import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import config from '../../../../src-main/hosts/packaging/config.ts';

const project = resolve(import.meta.dirname, '../../../..');

describe('what the packager is told', () => {
  it.each(['linux', 'mac', 'win'] as const)(
    'names a database engine that exists for %s on either processor',
    (system) => {
      const [set] = [config[system]?.files ?? []].flat();
      const patterns = typeof set === 'object' ? [set.filter ?? []].flat() : [];
      expect(patterns).toHaveLength(1);
      for (const arch of ['x64', 'arm64']) {
        const file = patterns[0]!.replace('${arch}', arch);
        expect([file, existsSync(join(project, file))]).toEqual([file, true]);
      }
    },
  );

  it('has an icon in the sizes that Linux and macOS ask for, each as large as its name says', () => {
    const folder = join(project, 'src-main/hosts/packaging', String(config.icon));
    const sizes = readdirSync(folder).map((name) => {
      const png = readFileSync(join(folder, name));
      // Width and height follow the head of the first chunk of a PNG (ISO/IEC 15948, 11.2.2).
      expect(name).toBe(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}.png`);
      return png.readUInt32BE(16);
    });
    expect(sizes.toSorted((one, other) => one - other)).toEqual([512, 1024]);
  });
});
