import { type Server } from 'node:http';
import { type AppError } from '../../core/app-error';
import { err, ok, type Result } from '../../core/result';

const host = '127.0.0.1';

const failureOf = (cause: NodeJS.ErrnoException, port: number): AppError =>
  cause.code === 'EADDRINUSE'
    ? {
        code: 'port-taken',
        message: `Port ${port} is taken by another program, perhaps by Driftline itself in another window.`,
        remedy: `Stop that program, or choose another port: PORT=${port + 1} npm start. A workspace belongs to its port.`,
      }
    : {
        code: 'port-refused',
        message: `Port ${port} cannot be used (${cause.code ?? cause.message}).`,
        remedy: 'Choose another port with PORT, above 1023.',
      };

/**
 * Lets a server listen on this machine only (127.0.0.1).
 *
 * @returns the address, or the errors `port-taken` and `port-refused`
 */
export const listen = (server: Server, port: number): Promise<Result<string, AppError>> =>
  new Promise((resolve) => {
    server.once('error', (cause: NodeJS.ErrnoException) => {
      resolve(err(failureOf(cause, port)));
    });
    server.listen(port, host, () => {
      resolve(ok(`http://${host}:${port}/`));
    });
  });
