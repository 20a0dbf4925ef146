'use client';

import dynamic from 'next/dynamic';
import { Loading } from '../../_ui/states';

/** Drawn in the browser alone: the exported page holds the shell. */
export const ClientsEntry = dynamic(() => import('./clients-screen').then((module) => module.ClientsScreen), {
  ssr: false,
  loading: () => <Loading heading />,
});
