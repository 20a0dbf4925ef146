import { buildSite } from './build-site';
import { reportFailure } from './report-failure';
import { projectRoot } from './site-paths';

const built = await buildSite(projectRoot, () => {
  console.log('Building the site …');
});
if (built.ok) console.log('out/ is current.');
else reportFailure(built.error);
