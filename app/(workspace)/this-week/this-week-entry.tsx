'use client';

import dynamic from 'next/dynamic';
import { Loading } from '../../_ui/states';

/** Drawn in the browser alone: the exported page holds the shell. */
export const ThisWeekEntry = dynamic(() => import('./this-week-screen').then((module) => module.ThisWeekScreen), {
  ssr: false,
  loading: () => <Loading heading />,
});
