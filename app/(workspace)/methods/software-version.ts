import { version } from '../../../package.json';

/** The version of this app. */
export const SOFTWARE_VERSION: string = version;
