export type { ClinicRef, GivenFile, Session, Workspace } from './workspace';
