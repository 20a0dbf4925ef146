'use client';

import dynamic from 'next/dynamic';
import { Loading } from '../../_ui/states';

/** The screen, drawn in the browser alone: the exported page holds the frame and no style attribute. */
export const VectorsEntry = dynamic(async () => (await import('./vectors-screen')).VectorsScreen, {
  ssr: false,
  loading: () => <Loading heading />,
});
