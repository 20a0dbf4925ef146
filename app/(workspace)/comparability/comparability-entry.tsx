'use client';

import dynamic from 'next/dynamic';
import { Loading } from '../../_ui/states';

/** The screen, drawn in the browser alone: the exported page holds the frame and no style attribute. */
export const ComparabilityEntry = dynamic(async () => (await import('./comparability-screen')).ComparabilityScreen, {
  ssr: false,
  loading: () => <Loading heading />,
});
