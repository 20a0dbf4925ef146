import type { ShareBarsData } from '../../lib/figures/share-bars/spec';

const RECORD_PARTS = [
  { id: 'met', fill: 'solid', sign: '✓', label: 'met' },
  { id: 'byProcedure', fill: 'stripes', sign: '✓p', label: 'by procedure' },
  { id: 'notMet', fill: 'strokes', sign: '✕', label: 'not met' },
  { id: 'unknown', fill: 'dots', sign: '?', label: 'unknown' },
  { id: 'notRecorded', fill: 'empty', sign: '·', label: 'not recorded here' },
] as const;

export const shareBarsData: ShareBarsData = {
  title: 'Share of 3,127 readings',
  parts: RECORD_PARTS,
  rows: [
    { id: 'fasting', label: 'fasting', counts: [2744, 0, 212, 171, 0] },
    { id: 'rested', label: 'rested', counts: [1020, 1490, 31, 0, 586] },
    { id: 'contact', label: 'contact check passed', counts: [3120, 0, 7, 0, 0] },
    { id: 'menstrual_phase', label: 'menstrual phase', counts: [0, 0, 0, 0, 3127] },
    { id: 'few', label: 'few', counts: [7, 0, 3, 1, 0] },
    { id: 'nothing', label: 'nothing', counts: [0, 0, 0, 0, 0] },
  ],
};
