import type { Formatters } from '../../formatters';

/** Words of the stack of questions about rows and people. */
export const importStack = (f: Formatters) => {
  const visits = (n: number): string => f.plural(n, '# visit', '# visits');
  return {
    title: 'Questions',
    progress: (p: { at: number; of: number }) => `Question ${f.number(p.at)} of ${f.number(p.of)}`,
    later: 'Decide later',
    change: 'Change the answer',
    changeOf: (p: { what: string }) => `Change the answer: ${p.what}`,
    allAnswered: 'Every question is answered.',
    answeredTitle: 'Answered',
    farOff: {
      before: (p: { measured: boolean }) => (p.measured ? 'Was this measured: ' : 'Is this right: '),
      after: (p: { name: string; unit: string }) => `${p.unit === '' ? '' : ` ${p.unit}`} (${p.name})?`,
      where: (p: { client: string; date: string; file: string; line: number }) =>
        `${p.client}, visit of ${p.date}; ${p.file}, line ${f.number(p.line)}.`,
      keep: 'Yes, keep it',
      refuse: 'No, do not accept the row',
      consequence:
        'Kept, the value counts like any other. Not accepted, the row stays out until a corrected file is imported.',
      kept: 'Answered: keep it.',
      refused: 'Answered: do not accept the row.',
    },
    ids: {
      ask: (p: { ids: readonly string[] }) => `Are ${f.list(p.ids)} one person?`,
      why: {
        spelling:
          'The ids differ only in case, spaces or signs. Visits of one person are compared with each other; those of different people never are.',
        'name-and-birth':
          'Name and birth date are the same. Visits of one person are compared with each other; those of different people never are.',
      },
      visits: (p: { id: string; visits: number }) => `${p.id}: ${visits(p.visits)}`,
      same: (p: { id: string }) => `One person, called ${p.id}`,
      different: 'Different people',
      open: 'Not answered: they count as different people.',
      answeredSame: (p: { ids: readonly string[]; client: string }) =>
        `${f.list(p.ids)}: one person, called ${p.client}.`,
      answeredDifferent: (p: { ids: readonly string[] }) => `${f.list(p.ids)}: different people.`,
    },
    birth: {
      ask: (p: { client: string }) => `When was ${p.client} born?`,
      why: 'The files hold more than one birth date for this id. The age in every equation follows from the one you choose.',
      option: (p: { date: string; visits: number }) => `${p.date} (${visits(p.visits)})`,
      open: 'Not answered: the birth date of most visits counts.',
      answered: (p: { client: string; date: string }) => `${p.client}: born ${p.date}.`,
    },
    sexes: {
      ask: (p: { client: string }) => `Which coding of sex do the equations use for ${p.client}?`,
      why: 'The files hold more than one, and the coding moves computed values by kilograms. A series uses one throughout; what is recorded stays as it is.',
      female: (p: { visits: number }) => `Female (${visits(p.visits)})`,
      male: (p: { visits: number }) => `Male (${visits(p.visits)})`,
      open: 'Not answered: the coding of most visits counts for all.',
      answered: (p: { client: string; sex: 'F' | 'M' }) =>
        `${p.client}: ${p.sex === 'F' ? 'female' : 'male'} for equations.`,
    },
    baseline: {
      answered: (p: { client: string; program: string; date: string }) =>
        `${p.client}, ${p.program}: the visit of ${p.date} is the baseline.`,
    },
    heights: {
      ask: (p: { client: string; median: string }) => `Does ${p.median} stand as the height of ${p.client}?`,
      why: 'Measured heights differ by more than 1.5 cm. In an adult one height counts for the whole series: the median.',
      option: (p: { height: string; visits: number; first: string }) =>
        `${p.height}: ${visits(p.visits)}, first on ${p.first}`,
      yes: 'Yes, the median stands',
      open: 'Not answered: the median counts. A height that was typed wrong is corrected on the client’s page after the import, or in the export.',
      answered: (p: { client: string }) => `${p.client}: the median height stands.`,
    },
    reading: {
      ask: (p: { client: string; date: string }) => `Which reading of ${p.client} on ${p.date} counts?`,
      why: {
        'same-figures':
          'Two rows hold the same figures and differ elsewhere. Written down twice, one counts; measured twice, both do.',
        'same-number':
          'The same reading number came twice with other figures. Corrected later, one counts; measured twice, both do.',
      },
      row: (p: { file: string; line: number }) => `${p.file}, line ${f.number(p.line)}`,
      column: 'Column',
      first: 'The first row',
      last: 'The last row',
      all: 'All are readings',
      open: 'Not answered: the later row waits.',
      caption: 'Where the rows differ',
      answered: (p: { client: string; date: string; decision: 'first' | 'last' | 'all' }) =>
        `${p.client}, ${p.date}: ${
          { first: 'the first row counts', last: 'the last row counts', all: 'all rows are readings' }[p.decision]
        }.`,
    },
  };
};
