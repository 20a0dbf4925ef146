import type { Formatters } from '../../formatters';

/** Words that several screens share. */
export const common = (f: Formatters) => ({
  appName: 'Driftline',
  invented: 'Invented data',
  inventedBanner: 'Oremoor is an invented clinic: every person, visit and number here is made up.',
  result: {
    up: '▲ up, more than error',
    down: '▼ down, more than error',
    within: '● within error',
    'cannot-compare': '○ cannot be compared',
    'no-threshold': '– no threshold',
  },
  comparable: {
    comparable: 'comparable',
    'by-procedure': 'comparable by procedure',
    caution: 'with a caution',
    no: 'cannot be compared',
  },
  caution:
    'Estimates from electrical measurements. They support and never replace examination and judgement by a licensed professional and the local rules.',
  saveTable: 'Save table as CSV',
  saveFigure: 'Save figure as SVG',
  count: (p: { n: number; one: string; other: string }) => f.plural(p.n, p.one, p.other),
});
