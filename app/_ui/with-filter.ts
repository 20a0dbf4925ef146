import { FILTER_NAMES } from '../_state/filter-params';

/** A path with the filter of the present address; a name the path gives itself wins. */
export const withFilter = (href: string, filter: URLSearchParams): string => {
  const [path = '/', own = ''] = href.split('?');
  const query = new URLSearchParams(own);
  for (const name of FILTER_NAMES) {
    const value = filter.get(name);
    if (value !== null && !query.has(name)) query.set(name, value);
  }
  const text = query.toString();
  return text === '' ? path : `${path}?${text}`;
};
