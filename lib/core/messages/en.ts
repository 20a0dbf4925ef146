import type { Formatters } from '../formatters';
import { common } from './en/common';
import { client } from './en/client';
import { clientOwn } from './en/client-own';
import { clientPages } from './en/client-pages';
import { clientVector } from './en/client-vector';
import { clients } from './en/clients';
import { comparability } from './en/comparability';
import { contact } from './en/contact';
import { devices } from './en/devices';
import { errorStudy } from './en/error-study';
import { studyEntry } from './en/study-entry';
import { studyPlanner } from './en/study-planner';
import { thisWeek } from './en/this-week';
import { checklist } from './en/checklist';
import { due } from './en/due';
import { figures } from './en/figures';
import { filter } from './en/filter';
import { importScreen } from './en/import';
import { indices } from './en/indices';
import { measureNames } from './en/measure-names';
import { methodsParagraph } from './en/methods-paragraph';
import { methods } from './en/methods';
import { methodsEntries } from './en/methods-entries';
import { methodsOwn } from './en/methods-own';
import { programs } from './en/programs';
import { reasons } from './en/reasons';
import { repeatability } from './en/repeatability';
import { settings } from './en/settings';
import { settingsKeeping } from './en/settings-keeping';
import { settingsLog } from './en/settings-log';
import { settingsPrivacy } from './en/settings-privacy';
import { settingsLean } from './en/settings-lean';
import { settingsPrograms } from './en/settings-programs';
import { shell } from './en/shell';
import { table } from './en/table';
import { vectors } from './en/vectors';
import { visitSheet } from './en/visit-sheet';

/** The English words of every screen. Another language is a function of the same type. */
export const en = (f: Formatters) => ({
  common: common(f),
  programs: programs(f),
  vectors: vectors(f),
  indices: indices(f),
  repeatability: repeatability(f),
  devices: devices(f),
  errorStudy: errorStudy(f),
  studyEntry: studyEntry(f),
  studyPlanner: studyPlanner(f),
  importScreen: importScreen(f),
  measures: measureNames,
  methodsParagraph: methodsParagraph(f),
  client: client(f),
  clientOwn: clientOwn(f),
  clientPages: clientPages(f),
  clientVector: clientVector(f),
  clients: clients(f),
  contact: contact(f),
  thisWeek: thisWeek(f),
  due: due(f),
  visitSheet: visitSheet(f),
  checklist: checklist(f),
  table: table(f),
  shell: shell(f),
  settings: settings(f),
  settingsKeeping: settingsKeeping(f),
  settingsPrivacy: settingsPrivacy(f),
  settingsLean: settingsLean(f),
  settingsPrograms: settingsPrograms(f),
  settingsLog: settingsLog(f),
  reasons,
  filter: filter(f),
  methods: methods(f),
  methodsEntries: methodsEntries(f),
  methodsOwn: methodsOwn(f),
  comparability: comparability(f),
  figures: figures(f),
});

export type Messages = ReturnType<typeof en>;
