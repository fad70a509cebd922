// URIs as the server compares them. Clients escape differently (`%3A` or `:`), so each URI is brought to one form, and
// the client's own spelling is kept for what is sent back.

/**
 * One form for all spellings of a URI: each part of the path unescaped and escaped again, drive letters small, two
 * slashes also where no authority follows. A document that is named but not saved yet stands where it will be; one
 * without a name stands alone, under a scheme of its own.
 */
export function normalUri(uri: string): string {
  const unnamed = /^untitled:([^/?#]+)$/i.exec(uri)?.[1];
  if (unnamed !== undefined)
    return `unnamed:///${encodeURIComponent(unescaped(unnamed.replace(/\.bay$/, '')))}.bay`;
  const match = /^([A-Za-z][A-Za-z0-9+.-]*):(?:\/\/([^/?#]*))?((?:\/[^?#]*)?)(.*)$/.exec(uri);
  if (!match || (match[2] === undefined && match[3] === '')) return uri;
  const [, written = '', authority = '', path = '', rest = ''] = match;
  const scheme = written.toLowerCase() === 'untitled' ? 'file' : written.toLowerCase();
  const parts = path.split('/').map((part, i) => {
    const plain = unescaped(part);
    return i === 1 && /^[A-Za-z]:$/.test(plain)
      ? `${plain.slice(0, 1).toLowerCase()}:`
      : encodeURIComponent(plain);
  });
  return `${scheme}://${authority}${parts.join('/')}${rest}`;
}

/** The folder a URI lies in, with a slash at its end. */
export function folderOf(uri: string): string {
  return uri.slice(0, uri.lastIndexOf('/') + 1);
}

/** The folder above a folder URI (both end with a slash); undefined at the top. */
export function above(folder: string): string | undefined {
  const up = folder.slice(0, folder.slice(0, -1).lastIndexOf('/') + 1);
  // The top of a disk holds no library: looking through it would take a while. The top of another scheme may.
  return up === folder || up === 'file:///' || !/:\/\/[^/]*\//.test(up) ? undefined : up;
}

/** The library path of a URI below a root that ends with a slash; undefined when it lies elsewhere. */
export function pathIn(root: string, uri: string): string | undefined {
  return uri.startsWith(root) ? uri.slice(root.length).split('/').map(unescaped).join('/') : undefined;
}

export function uriOf(root: string, path: string): string {
  return root + path.split('/').map(encodeURIComponent).join('/');
}

function unescaped(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
