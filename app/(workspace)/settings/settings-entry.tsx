'use client';

import dynamic from 'next/dynamic';
import { Loading } from '../../_ui/states';

/** Drawn in the browser alone: the exported page holds the shell. */
export const SettingsEntry = dynamic(() => import('./settings-screen').then((module) => module.SettingsScreen), {
  ssr: false,
  loading: () => <Loading heading />,
});
