import type { Formatters } from '../../formatters';

/** The bar that is the same on every screen. */
export const filter = (f: Formatters) => ({
  title: 'What is shown',
  value: 'Value',
  level: 'Error at',
  levelOption: (p: { level: number }) => `${f.number(p.level)} %`,
  pairs: 'Pairs',
  pairsOption: {
    strict: 'comparable, or by procedure',
    caution: '… and with a caution',
    all: 'all pairs',
  },
  pairsCount: (p: { name: string; n: number }) => `${p.name} (${f.number(p.n)})`,
  program: 'Program',
  site: 'Site',
  sex: 'Sex',
  ageFrom: 'Age from',
  ageTo: 'to',
  all: 'all',
  sexes: { F: 'women', M: 'men' },
  reset: 'Show all again',
  people: 'People',
  peopleAll: 'all people',
});
