import { FILTER_NAMES } from '../_state/filter-params';

/** A path with the filter of the present address; a name the path gives itself wins. */
export const withFilter = (href: string, filter: URLSearchParams): string => {
  const [address = '', anchor] = href.split('#');
  const [path = '/', own = ''] = address.split('?');
  const query = new URLSearchParams(own);
  for (const name of FILTER_NAMES) {
    const value = filter.get(name);
    if (value !== null && !query.has(name)) query.set(name, value);
  }
  const text = query.toString();
  return `${path}${text === '' ? '' : `?${text}`}${anchor === undefined ? '' : `#${anchor}`}`;
};
