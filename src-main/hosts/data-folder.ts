import { homedir } from 'node:os';
import { posix, resolve, win32 } from 'node:path';

const folderName = 'chargewright';

/** What decides where the catalogue lives; given as a value so that every platform can be tried on one. */
export interface Surroundings {
  readonly platform: NodeJS.Platform;
  readonly environment: NodeJS.ProcessEnv;
  readonly home: string;
}

function filled(value: string | undefined): string | null {
  return value === undefined || value === '' ? null : value;
}

function userDataPlace({ platform, environment, home }: Surroundings): string {
  if (platform === 'win32') {
    return filled(environment['APPDATA']) ?? win32.join(home, 'AppData', 'Roaming');
  }
  if (platform === 'darwin') return posix.join(home, 'Library', 'Application Support');
  const place = filled(environment['XDG_DATA_HOME']);
  // The XDG base directory specification (0.8) has relative paths ignored.
  return place !== null && posix.isAbsolute(place) ? place : posix.join(home, '.local', 'share');
}

/** The folder of the rider's catalogue, the same for both hosts so that they share one. */
export function dataFolder(surroundings: Surroundings): string {
  const chosen = filled(surroundings.environment['CHARGEWRIGHT_DATA']);
  if (chosen !== null) return resolve(chosen);
  const path = surroundings.platform === 'win32' ? win32 : posix;
  return path.join(userDataPlace(surroundings), folderName);
}

/** The data folder of this process. */
export function ownDataFolder(): string {
  return dataFolder({ platform: process.platform, environment: process.env, home: homedir() });
}
