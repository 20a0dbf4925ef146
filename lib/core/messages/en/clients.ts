import type { Formatters } from '../../formatters';

/** The table of all clients. */
export const clients = (f: Formatters) => ({
  title: 'Clients',
  headline: (p: { n: number; visits: number; from: string; to: string }) =>
    `${f.plural(p.n, 'One client', '# clients')} with ${f.plural(p.visits, 'one visit', '# visits')}, ${p.from} to ${p.to}.`,
  detail: 'Enter or a click opens a client. What you search for stays on this page.',
  caption: 'All clients',
  word: 'clients',
  search: 'Search id or name',
  alsoKnownAs: (p: { names: string }) => `also known as ${p.names}`,
  inFiles: (p: { name: string }) => `in the files: ${p.name}`,
  client: 'Client',
  name: 'Name',
  program: 'Program',
  sex: 'Sex',
  sexes: { F: 'F', M: 'M' },
  age: 'Age',
  site: 'Site',
  visits: 'Visits',
  latest: 'Latest visit',
});
