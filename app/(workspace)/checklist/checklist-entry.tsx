'use client';

import dynamic from 'next/dynamic';
import { Loading } from '../../_ui/states';

/** Drawn in the browser alone: the exported page holds the shell. */
export const ChecklistEntry = dynamic(() => import('./checklist-screen').then((module) => module.ChecklistScreen), {
  ssr: false,
  loading: () => <Loading heading />,
});
