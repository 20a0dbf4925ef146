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
  program: 'Program',
  site: 'Site',
  sex: 'Sex',
  ageFrom: 'Age from',
  ageTo: 'to',
  all: 'all',
  sexes: { F: 'women', M: 'men' },
  reset: 'Show all again',
  peopleAll: 'all people',
  ages: (p: { from: number | null; to: number | null }) =>
    p.from === null
      ? `up to ${f.number(p.to ?? 0)} years`
      : p.to === null
        ? `from ${f.number(p.from)} years`
        : `${f.number(p.from)} to ${f.number(p.to)} years`,
});
