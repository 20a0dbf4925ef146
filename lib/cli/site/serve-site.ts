import { realpathSync } from 'node:fs';
import { type Server } from 'node:http';
import { type AppError } from '../../core/app-error';
import { ok, type Result } from '../../core/result';
import { listen } from './listen';
import { defaultPort } from './read-port';
import { createSiteServer } from './site-server';
import { type HeaderList } from './security-headers';

/** A site being served, and the lines that tell a person where. */
export interface RunningSite {
  readonly server: Server;
  readonly address: string;
  readonly notice: string | undefined;
}

/**
 * Serves a built site on this machine.
 *
 * @returns the running server, or the errors of {@link listen}
 */
export const serveSite = async (
  folder: string,
  headers: HeaderList,
  port: number,
): Promise<Result<RunningSite, AppError>> => {
  const server = createSiteServer(realpathSync(folder), headers);
  const address = await listen(server, port);
  if (!address.ok) return address;
  const notice =
    port === defaultPort
      ? undefined
      : `A workspace that was opened on port ${defaultPort} stays there and is not seen from port ${port}.`;
  return ok({ server, address: address.value, notice });
};
