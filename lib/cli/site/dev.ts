import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { copyDemoFiles } from './copy-demo-files';
import { copyEngineFiles } from './copy-engine-files';
import engineFiles from './engine-files.json';
import { reportFailure } from './report-failure';
import { projectRoot, sitePaths } from './site-paths';

const engine = copyEngineFiles(projectRoot, engineFiles);
if (engine.ok) {
  copyDemoFiles(sitePaths(projectRoot));
  const next = join(projectRoot, 'node_modules/next/dist/bin/next');
  const child = spawn(process.execPath, [next, 'dev', '-H', '127.0.0.1', '-p', process.env.PORT ?? '3000'], {
    cwd: projectRoot,
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1' },
    stdio: 'inherit',
  });
  child.on('close', (code) => {
    process.exitCode = code ?? 0;
  });
} else {
  reportFailure(engine.error);
}
