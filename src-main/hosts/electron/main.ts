import { builtFolders } from '../built-folders.ts';
import { ownDataFolder } from '../data-folder.ts';
import { pageAddress } from './page-address.ts';
import { setupPageScheme } from './page-scheme.ts';
import { setupReadiness } from './readiness.ts';
import { setupNavigation } from './refusals.ts';
import { setupSingleInstance } from './single-instance.ts';
import { setupUserData } from './user-data.ts';

const folders = builtFolders(import.meta.dirname);
const dataFolder = ownDataFolder();
const page = pageAddress(process.env['ELECTRON_RENDERER_URL']);

setupUserData(dataFolder);
setupPageScheme();
setupNavigation(page);
if (setupSingleInstance()) setupReadiness({ folders, dataFolder, page });
