'use client';

import { parseAsString, useQueryState } from 'nuqs';
import { EntryView } from './entry-view';
import { MethodsOverview } from './methods-overview';

/** Methods: what computes which number here; one entry of the catalogue where the address names it. */
export const MethodsScreen = () => {
  const [entry] = useQueryState('entry', parseAsString);
  return entry === null ? <MethodsOverview /> : <EntryView key={entry} id={entry} />;
};
