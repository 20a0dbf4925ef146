import { buildSite } from './build-site';
import { readPort } from './read-port';
import { reportFailure } from './report-failure';
import { serveSite } from './serve-site';
import { projectRoot, sitePaths } from './site-paths';

const start = async (): Promise<void> => {
  const port = readPort(process.env.PORT);
  if (!port.ok) {
    reportFailure(port.error);
    return;
  }
  const built = await buildSite(projectRoot, () => {
    console.error('Building the site; this takes about half a minute and is needed only after a change.');
  });
  if (!built.ok) {
    reportFailure(built.error);
    return;
  }
  const site = await serveSite(sitePaths(projectRoot).out, built.value.headers, port.value);
  if (!site.ok) {
    reportFailure(site.error);
    return;
  }
  const { server, address, notice } = site.value;
  console.log(`Driftline is at ${address}`);
  if (notice !== undefined) console.error(notice);
  const stop = (): void => {
    server.close();
    server.closeAllConnections();
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
};

await start();
