import type { Settings } from '../cohort/settings';
import { shownName, type ClientMarks } from './client-marks';
import type { Mark } from './clinic-state';

/** The names of one client: what is shown, and what else a search finds. Null where there is none. */
export interface ClientNames {
  /** As the clinic shows it, else as exported. */
  readonly shown: string | null;
  /** Family name, given name as exported. */
  readonly exported: string | null;
  readonly alsoKnownAs: string | null;
}

interface Exported {
  readonly client: string;
  readonly familyName: string | null;
  readonly givenName: string | null;
}

type NameMarks = Readonly<Pick<ClientMarks, 'display-name' | 'also-known-as'>>;

const isNameMark = (kind: string): kind is keyof NameMarks => kind === 'display-name' || kind === 'also-known-as';

/** Of every client at once, under whatever spelling of the id a name was kept; in one pass over the marks. */
export const namesOfClients = ({
  marks,
  settings,
}: {
  readonly marks: readonly Mark[];
  readonly settings: Settings;
}): ((client: Exported) => ClientNames) => {
  const clientOf = new Map(
    settings.answers.flatMap((answer) =>
      answer.kind === 'same-client' ? answer.ids.map((id): [string, string] => [id, answer.client]) : [],
    ),
  );
  const kept = new Map<string, NameMarks>();
  for (const mark of marks) {
    if (!isNameMark(mark.kind)) continue;
    const client = clientOf.get(mark.client) ?? mark.client;
    kept.set(client, { ...kept.get(client), [mark.kind]: mark });
  }
  return (client) => {
    const own = kept.get(client.client) ?? {};
    const alsoKnownAs = own['also-known-as']?.value ?? '';
    return {
      shown: shownName(own, client),
      exported: shownName({}, client),
      alsoKnownAs: alsoKnownAs === '' ? null : alsoKnownAs,
    };
  };
};
