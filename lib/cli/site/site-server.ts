import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { join, relative, sep } from 'node:path';
import { pipeline } from 'node:stream';
import { contentType } from './content-type';
import { resolveRequest } from './resolve-request';
import { type HeaderList } from './security-headers';

const isVersioned = (path: string): boolean => /^(_next\/static|duckdb-[^/]+)\//.test(path);

const sendText = (response: ServerResponse, status: number, text: string): void => {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'no-store' });
  response.end(`${text}\n`);
};

const sendFile = (
  request: IncomingMessage,
  response: ServerResponse,
  folder: string,
  path: string,
  status: number,
): void => {
  const { size, mtimeMs } = statSync(path);
  const tag = `"${size.toString(36)}-${Math.trunc(mtimeMs).toString(36)}"`;
  const inside = relative(folder, path).split(sep).join('/');
  response.setHeader('ETag', tag);
  response.setHeader('Cache-Control', isVersioned(inside) ? 'public, max-age=31536000, immutable' : 'no-cache');
  if (status === 200 && request.headers['if-none-match'] === tag) {
    response.writeHead(304).end();
    return;
  }
  response.writeHead(status, { 'Content-Type': contentType(path), 'Content-Length': size });
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  pipeline(createReadStream(path), response, (failure) => {
    if (failure) response.destroy();
  });
};

/**
 * A server of files for one built site. It sends the given headers with every response, errors and redirects included.
 *
 * @param folder absolute, real path of the site
 * @param headers what the site's record holds
 */
export const createSiteServer = (folder: string, headers: HeaderList): Server =>
  createServer((request, response) => {
    for (const [name, value] of headers) response.setHeader(name, value);
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.setHeader('Allow', 'GET, HEAD');
      sendText(response, 405, 'Only GET and HEAD are answered here.');
      return;
    }
    const target = resolveRequest(folder, request.url ?? '/');
    switch (target.kind) {
      case 'file':
        sendFile(request, response, folder, target.path, 200);
        return;
      case 'redirect':
        response.setHeader('Location', target.location);
        sendText(response, 308, target.location);
        return;
      case 'malformed':
        sendText(response, 400, 'This address cannot be read.');
        return;
      case 'missing': {
        const page = join(folder, '404.html');
        if (existsSync(page)) sendFile(request, response, folder, page, 404);
        else sendText(response, 404, 'Nothing is at this address.');
      }
    }
  });
