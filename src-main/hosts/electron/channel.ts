/** The one channel between the page's bridge and the workbench; the name of the call is its first argument. */
export const callChannel = 'chargewright:call';
