import type { Citation } from './citation';

/** FFMI and FMI add up to the body mass index; read in the abstract. */
export const SCHUTZ_2002: Citation = {
  id: 'schutz-2002',
  authors: ['Schutz Y'],
  andOthers: true,
  journal: 'Int J Obes',
  year: 2002,
  volume: '26',
  pages: '953–960',
  doi: '10.1038/sj.ijo.0802037',
};

/** The correction of vectors by circumferences. */
export const MARINI_2013: Citation = {
  id: 'marini-2013',
  authors: ['Marini E'],
  andOthers: true,
  journal: 'J Nutr Health Aging',
  year: 2013,
  volume: '17',
  pages: '515–521',
  doi: '10.1007/s12603-012-0411-7',
};

/** Which circumferences the correction uses; read in the abstract. */
export const SARAGAT_2014: Citation = {
  id: 'saragat-2014',
  authors: ['Saragat B'],
  andOthers: true,
  journal: 'Exp Gerontol',
  year: 2014,
  volume: '50',
  pages: '52–56',
};

/** The published between-day error of the impedance; read in the abstract, without its authors. */
export const BETWEEN_DAY_ERROR_1997: Citation = {
  id: 'between-day-error-1997',
  authors: [],
  journal: 'J Gerontol',
  year: 1997,
  volume: '52A',
  pages: 'M137–M141',
};

/** Precision error from pooled variances with its degrees of freedom; read in the abstract. */
export const GLUEER_1995: Citation = {
  id: 'glueer-1995',
  authors: ['Glüer CC', 'Blake G', 'Lu Y', 'Blunt BA', 'Jergas M', 'Genant HK'],
  journal: 'Osteoporos Int',
  year: 1995,
  volume: '5',
  issue: '4',
  pages: '262–270',
  doi: '10.1007/BF01774016',
};

/** The European guidance on bioimpedance in practice: the body mass indices between which estimates over time are advised. */
export const ESPEN_2004: Citation = {
  id: 'espen-2004',
  authors: [],
  journal: 'Clin Nutr',
  year: 2004,
  volume: '23',
  pages: '1430–1453',
};

/** The water share of lean tissue changes when weight falls fast. */
export const FAST_WEIGHT_LOSS_2023: Citation = {
  id: 'fast-weight-loss-2023',
  authors: [],
  journal: 'Eur J Clin Nutr',
  year: 2023,
  volume: '77',
  pages: '525–531',
};

/** Limits of agreement. */
export const BLAND_ALTMAN_1986: Citation = {
  id: 'bland-altman-1986',
  authors: ['Bland JM', 'Altman DG'],
  journal: 'Lancet',
  year: 1986,
  volume: 'i',
  pages: '307–310',
};

/** Limits of agreement with 1.96 instead of 2. */
export const BLAND_ALTMAN_1999: Citation = {
  id: 'bland-altman-1999',
  authors: ['Bland JM', 'Altman DG'],
  journal: 'Stat Methods Med Res',
  year: 1999,
  volume: '8',
  pages: '135–160',
};

/** The plane of R/H and Xc/H with its ellipses. */
export const PICCOLI_1994: Citation = {
  id: 'piccoli-1994',
  authors: ['Piccoli A', 'Rossi B', 'Pillon L', 'Bucciante G'],
  journal: 'Kidney Int',
  year: 1994,
  volume: '46',
  pages: '534–539',
  fromMemory: ['authors', 'journal', 'year', 'volume', 'pages'],
};

/** Two mean vectors compared without equal covariances. */
export const KRISHNAMOORTHY_YU_2004: Citation = {
  id: 'krishnamoorthy-yu-2004',
  authors: ['Krishnamoorthy', 'Yu'],
  journal: 'Stat Probab Lett',
  year: 2004,
  volume: '66',
  pages: '161–169',
};
