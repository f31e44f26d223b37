import type { Circumstances } from './choose-host.ts';
import { electronFolder, findLauncher } from './electron-runtime.ts';

/** Whether windows can be shown: on Linux one of two variables names a display, elsewhere there is one. */
export function hasDisplay(platform: NodeJS.Platform, environment: NodeJS.ProcessEnv): boolean {
  if (platform !== 'linux') return true;
  return Boolean(environment['DISPLAY']) || Boolean(environment['WAYLAND_DISPLAY']);
}

/** What this process finds itself in. */
export function ownCircumstances(): Circumstances {
  return {
    wish: process.env['CHARGEWRIGHT_HOST'],
    platform: process.platform,
    hasDisplay: hasDisplay(process.platform, process.env),
    isRoot: process.getuid?.() === 0,
    findLauncher: () => findLauncher(electronFolder()),
  };
}
