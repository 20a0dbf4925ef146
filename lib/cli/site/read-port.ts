import { type AppError } from '../../core/app-error';
import { err, ok, type Result } from '../../core/result';

/** The port where the site is when nobody asks for another one. A workspace belongs to its address, port included. */
export const defaultPort = 3000;

/** The TCP port asked for by the variable PORT: 1 to 65535, or the default where it is absent or empty. */
export const readPort = (text: string | undefined): Result<number, AppError> => {
  if (text === undefined || text === '') return ok(defaultPort);
  const port = Number(text);
  if (/^\d+$/.test(text) && port >= 1 && port <= 65_535) return ok(port);
  return err({
    code: 'port-not-a-number',
    message: `PORT is "${text}", which is not a port.`,
    remedy: 'Set PORT to a whole number from 1 to 65535, or leave it out.',
  });
};
