const reasons: Readonly<Record<string, string>> = {
  EACCES: 'it may not be written or read by you',
  EPERM: 'it may not be written or read by you',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is used up',
  ENOENT: 'the folder or file is no longer there',
  ENOTDIR: 'its folder is not a folder',
  EISDIR: 'there is a folder of that name',
  EBUSY: 'another program holds it open',
};

/** The words for what the system reported; its code where we have none. */
export function diskReason(fault: unknown): string {
  const code = fault instanceof Error && 'code' in fault ? String(fault.code) : 'unknown';
  return reasons[code] ?? `the system reports ${code}`;
}
