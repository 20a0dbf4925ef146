'use client';

import dynamic from 'next/dynamic';
import { Loading } from '../../_ui/states';

/** Drawn in the browser alone: the exported page holds the shell. */
export const ClientEntry = dynamic(() => import('./client-screen').then((module) => module.ClientScreen), {
  ssr: false,
  loading: () => <Loading heading />,
});
