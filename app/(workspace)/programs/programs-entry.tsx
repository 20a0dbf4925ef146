'use client';

import dynamic from 'next/dynamic';
import { Loading } from '../../_ui/states';

/** The screen, drawn in the browser alone: the exported page holds the frame and no style attribute. */
export const ProgramsEntry = dynamic(async () => (await import('./programs-screen')).ProgramsScreen, {
  ssr: false,
  loading: () => <Loading heading />,
});
