import { existsSync, realpathSync, statSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** What a request's path means within the site's folder. */
export type RequestTarget =
  | { readonly kind: 'file'; readonly path: string }
  | { readonly kind: 'redirect'; readonly location: string }
  | { readonly kind: 'missing' }
  | { readonly kind: 'malformed' };

const missing: RequestTarget = { kind: 'missing' };

const decoded = (pathname: string): string | undefined => {
  try {
    const text = decodeURIComponent(pathname);
    return text.includes('\0') ? undefined : text;
  } catch {
    return undefined;
  }
};

/**
 * Finds the file for a request. A folder is answered by its index.html, after a redirect to the address with the closing slash.
 * Nothing outside the folder is ever found, whether by `..`, by an encoded separator or by a symbolic link.
 *
 * @param folder absolute path of the site
 * @param requestUrl the request line's target, path and query
 */
export const resolveRequest = (folder: string, requestUrl: string): RequestTarget => {
  const [rawPath = '/', ...query] = requestUrl.split('?');
  const pathname = decoded(rawPath);
  if (pathname === undefined || !pathname.startsWith('/')) return { kind: 'malformed' };

  const root = realpathSync(folder);
  const wanted = join(root, pathname);
  if (!existsSync(wanted)) return missing;
  const real = realpathSync(wanted);
  if (real !== root && !real.startsWith(root + sep)) return missing;
  if (statSync(real).isFile()) return pathname.endsWith('/') ? missing : { kind: 'file', path: real };

  const index = join(real, 'index.html');
  if (!existsSync(index)) return missing;
  if (pathname.endsWith('/')) return { kind: 'file', path: index };
  // Built from the folder that was found, not from the request: "//host" would otherwise lead to another origin.
  const inside = relative(root, real).split(sep).map(encodeURIComponent).join('/');
  return { kind: 'redirect', location: ['/' + inside + '/', ...query].join('?') };
};
