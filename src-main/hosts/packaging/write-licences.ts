import { writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { licenceFile } from './config.ts';
import { licenceList } from './licence-list.ts';
import { readLicence } from './licences.ts';
import { readLock } from './locked-packages.ts';
import { shippedPackages } from './shipped-packages.ts';

const project = resolve(import.meta.dirname, '../../..');
const folders = shippedPackages(project, readLock(project));
const licences = folders.map((folder) => readLicence(project, folder));
writeFileSync(join(project, licenceFile), licenceList(project, licences));
for (const { name, version, licence } of licences) console.log(`${name} ${version}: ${licence}`);
