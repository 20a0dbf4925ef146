'use client';

import dynamic from 'next/dynamic';
import { Loading } from '../../_ui/states';

/** Drawn in the browser alone: the exported page holds the shell. */
export const VisitSheetEntry = dynamic(() => import('./visit-sheet-screen').then((module) => module.VisitSheetScreen), {
  ssr: false,
  loading: () => <Loading heading />,
});
