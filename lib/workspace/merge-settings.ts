import { enrolmentKey } from '../cohort/plan-rows';
import { settingsSchema, type Answer, type Settings } from '../cohort/settings';
import { mergeDevices } from './merge-devices';
import { mergeErrorStudy } from './merge-error-study';
import { mergeMethods } from './merge-methods';
import { mergeList, mergeValue, type MergeWork } from './three-way';

/** What an answer is about, without what was answered. */
const subjectOf = (answer: Answer): string => {
  switch (answer.kind) {
    case 'same-client':
    case 'different-clients':
      return `people:${[...answer.ids].sort().join(', ')}`;
    case 'far-off':
      return `${answer.kind}:${answer.client}, ${answer.visitDate}, ${answer.column}, ${answer.value}`;
    case 'baseline':
      return `${answer.kind}:${enrolmentKey(answer)}`;
    case 'reading':
      return `${answer.kind}:${answer.client}, ${answer.visitDate}`;
    default:
      return `${answer.kind}:${answer.client}`;
  }
};

const asText = (value: unknown): string => JSON.stringify(value);

type Item = Settings[ListKey][number];
type ListKey = 'programs' | 'enrolments' | 'rules' | 'procedures' | 'withoutProcedure' | 'answers';

/** How the items of each list are told apart; procedures are a set. */
const LIST_KEYS: { readonly [Key in ListKey]: (item: Settings[Key][number]) => string } = {
  programs: (program) => program.name,
  enrolments: enrolmentKey,
  rules: (rule) => rule.id,
  procedures: asText,
  withoutProcedure: asText,
  answers: subjectOf,
};

const isList = (key: string): key is ListKey => Object.hasOwn(LIST_KEYS, key);

/** Settings out of three, key by key: programs by name, enrolments by client, program and start, rules by id, answers by what they are about, procedures as a set, methods, devices and the error study part by part. */
export const mergeSettings = (work: MergeWork, base: Settings, mine: Settings, theirs: Settings): Settings => {
  const keys = new Set([...Object.keys(mine), ...Object.keys(theirs)]) as ReadonlySet<keyof Settings>;
  const merged = [...keys].map((key): readonly [string, unknown] => {
    if (key === 'methods') return [key, mergeMethods(work, base.methods, mine.methods, theirs.methods)];
    if (key === 'devices') return [key, mergeDevices(work, base.devices, mine.devices, theirs.devices)];
    if (key === 'errorStudy') return [key, mergeErrorStudy(work, base.errorStudy, mine.errorStudy, theirs.errorStudy)];
    const path = `settings.${key}`;
    if (!isList(key)) return [key, mergeValue<unknown>(work, path, base[key], mine[key], theirs[key])];
    const keyOf = LIST_KEYS[key] as (item: Item) => string;
    return [key, mergeList<Item>(work, { path, keyOf }, base[key], mine[key], theirs[key])];
  });
  return settingsSchema.parse(Object.fromEntries(merged.filter(([, value]) => value !== undefined)));
};
