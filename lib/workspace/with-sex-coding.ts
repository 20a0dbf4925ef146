import type { Settings } from '../cohort/settings';

/** The settings with one sex coding for every visit of a client. */
export const withSexCoding = (settings: Settings, client: string, sex: 'F' | 'M'): Settings => ({
  ...settings,
  answers: [
    ...settings.answers.filter((answer) => answer.kind !== 'sex-for-equations' || answer.client !== client),
    { kind: 'sex-for-equations', client, sex },
  ],
});
