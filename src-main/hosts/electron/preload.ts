import { contextBridge, ipcRenderer } from 'electron';
import { isCallName } from '../../../shared-types/contract.ts';
import { unknownCall, type Outcome } from '../../../shared-types/outcome.ts';
import { callChannel } from './channel.ts';

/** Passes a call of the contract on; any other name ends here, so the page can reach nothing else. */
async function call(name: unknown, input: unknown): Promise<Outcome<unknown>> {
  if (!isCallName(name)) return unknownCall(name);
  return (await ipcRenderer.invoke(callChannel, name, input)) as Outcome<unknown>;
}

contextBridge.exposeInMainWorld('chargewright', { host: 'electron', call });
