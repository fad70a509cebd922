// Why the system refused a file, and what went wrong inside, for people.

/** Why the system refused, in words that follow the file's name. */
export function reason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return REASONS[code] ?? `cannot be used (${error instanceof Error ? error.message : String(error)})`;
}

/** The same of a file that could not be written. */
export function reasonToWrite(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return code === 'EACCES' ? 'may not be written: permission is missing' : reason(error);
}

/** What went wrong inside, in one line that is never empty: some errors carry no message, others a page of them. */
export function faultWords(error: unknown): string {
  if (!(error instanceof Error)) return String(error) || 'no reason was given';
  const [line] = error.message.split('\n').filter((each) => each.trim() !== '');
  return line ?? ('code' in error ? String(error.code) : error.name);
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'does not exist',
  EACCES: 'may not be opened: permission is missing',
  EPERM: 'may not be changed: permission is missing',
  EISDIR: 'is a folder',
  ENOTDIR: 'lies under something that is not a folder',
  ELOOP: 'is a link that leads round in a circle',
  EFBIG: 'does not fit: files here may not be that large',
  ENOSPC: 'does not fit: the drive is full',
  EROFS: 'lies on a drive that cannot be written to',
  ENAMETOOLONG: 'has too long a name',
  EMFILE: 'cannot be opened: too many files are open',
  EBUSY: 'is in use by another program',
  ENOTEMPTY: 'is there already',
  EEXIST: 'is there already',
};
