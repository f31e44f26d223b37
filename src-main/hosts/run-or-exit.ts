/** Runs a start-up; a fault ends the process with one line instead of a stack. */
export async function runOrExit(what: string, run: () => Promise<void>): Promise<void> {
  try {
    await run();
  } catch (fault) {
    console.error(`${what}: ${fault instanceof Error ? fault.message : String(fault)}`);
    process.exitCode = 1;
  }
}
