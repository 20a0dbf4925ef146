import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { z } from 'zod';
import { buildSite } from './build-site';
import { packageSite } from './package-site';
import { reportFailure } from './report-failure';
import { projectRoot, sitePaths } from './site-paths';
import { thirdPartyNotices } from './third-party-notices';

const read = (name: string): string => readFileSync(join(projectRoot, name), 'utf8');

const built = await buildSite(projectRoot, () => {
  console.log('Building the site …');
});
if (built.ok) {
  const { version } = z.object({ version: z.string() }).parse(JSON.parse(read('package.json')));
  const paths = sitePaths(projectRoot);
  const archive = packageSite(paths.out, {
    version,
    headers: built.value.headers,
    licence: read('LICENSE'),
    notices: thirdPartyNotices(projectRoot),
  });
  mkdirSync(paths.dist, { recursive: true });
  const target = join(paths.dist, `driftline-${version}.zip`);
  writeFileSync(target, archive);
  console.log(`${relative(projectRoot, target)} (${(archive.length / 1e6).toFixed(1)} MB)`);
} else {
  reportFailure(built.error);
}
