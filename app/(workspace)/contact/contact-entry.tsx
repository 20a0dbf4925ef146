'use client';

import dynamic from 'next/dynamic';
import { Loading } from '../../_ui/states';

/** Drawn in the browser alone: the exported page holds the shell. */
export const ContactEntry = dynamic(() => import('./contact-screen').then((module) => module.ContactScreen), {
  ssr: false,
  loading: () => <Loading heading />,
});
