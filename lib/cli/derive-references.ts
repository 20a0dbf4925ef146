import { readFile, writeFile } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { openNodeEngine } from '../engine/node';
import type { Row } from '../engine/types';

/*
 * Derives lib/measures/references/us-adults-2011-2018-figures.ts: FMI and FFMI in kg/m² by sex and age band of 11,779
 * adults of the US National Health and Nutrition Examination Survey 2011–2018 (whole-body DXA).
 *
 *   npx tsx lib/cli/derive-references.ts nhanes_dxa_2011_2018_adults.csv.gz
 *
 * The file (CSV, gzip) has a row per adult with at least: sex (F, M), age (completed years, 18–59), fmi, ffmi (kg/m²).
 * Source of the rows: National Center for Health Statistics, US government data, for statistical use only. Nobody may try
 * to find out who a row is. Rows never enter the project: only the figures of this query do.
 *
 * Percentiles are of type 7 (Hyndman & Fan, Am Stat 1996;50:361–365): linear between order statistics at 1 + (n − 1)p.
 * SDs have n − 1 in the denominator; r is Pearson's. Nothing is weighted: the figures describe these people, not the
 * population of the United States.
 */

const PERCENTILES = [5, 10, 25, 50, 75, 90, 95] as const;
const AGE_BANDS = [
  [18, 30],
  [30, 40],
  [40, 50],
  [50, 60],
] as const;

/** Figures of one index, before rounding. */
export interface DerivedFigures {
  readonly mean: number;
  readonly sd: number;
  readonly percentiles: readonly number[];
}

export interface DerivedStratum {
  readonly sex: 'F' | 'M';
  readonly ageFrom: number;
  readonly ageBelow: number;
  readonly n: number;
  readonly fmi: DerivedFigures;
  readonly ffmi: DerivedFigures;
  readonly r: number;
}

const indexColumns = (index: string): string =>
  [
    `AVG(${index}) AS ${index}_mean`,
    `STDDEV_SAMP(${index}) AS ${index}_sd`,
    ...PERCENTILES.map((percentile) => `QUANTILE_CONT(${index}, ${percentile / 100}) AS ${index}_p${percentile}`),
  ].join(', ');

const at = (row: Row, name: string): number => {
  const value = row[name];
  if (typeof value !== 'number') throw new Error(`the file gives no ${name} for ${JSON.stringify(row)}`);
  return value;
};

const figures = (row: Row, index: string): DerivedFigures => ({
  mean: at(row, `${index}_mean`),
  sd: at(row, `${index}_sd`),
  percentiles: PERCENTILES.map((percentile) => at(row, `${index}_p${percentile}`)),
});

/** The figures of every sex and age band. Rejects where the file lacks a column or a band. */
export const deriveReferences = async (gzippedCsv: Uint8Array): Promise<readonly DerivedStratum[]> => {
  const engine = await openNodeEngine();
  try {
    const path = await engine.addFile('survey.csv', gunzipSync(gzippedCsv));
    const from = AGE_BANDS.map(([first, below]) => `WHEN age >= ${first} AND age < ${below} THEN ${first}`).join(' ');
    const rows = await engine.query(`SELECT sex, CASE ${from} END AS age_from, COUNT(*) AS n,
        ${indexColumns('fmi')}, ${indexColumns('ffmi')}, CORR(fmi, ffmi) AS r
      FROM read_csv('${path.replaceAll("'", "''")}', header = true) GROUP BY ALL ORDER BY sex, age_from`);
    return rows.map((row) => {
      const ageFrom = at(row, 'age_from');
      return {
        sex: row['sex'] === 'F' ? 'F' : 'M',
        ageFrom,
        ageBelow: AGE_BANDS.find(([first]) => first === ageFrom)?.[1] ?? ageFrom,
        n: at(row, 'n'),
        fmi: figures(row, 'fmi'),
        ffmi: figures(row, 'ffmi'),
        r: at(row, 'r'),
      };
    });
  } finally {
    await engine.close();
  }
};

const rounded = (value: number): string => String(Number(value.toFixed(4)));

const figuresText = ({ mean, sd, percentiles }: DerivedFigures): string =>
  `{ mean: ${rounded(mean)}, sd: ${rounded(sd)}, percentiles: [${percentiles.map(rounded).join(', ')}] }`;

/** The module that keeps the figures, rounded to four decimals. */
export const figuresModule = (strata: readonly DerivedStratum[]): string =>
  `import type { IndexStratum } from './reference-set';

/** Written by lib/cli/derive-references.ts, which says what it is; not edited by hand. Indices in kg/m², ages in years. */
export const US_ADULTS_2011_2018_FIGURES: readonly IndexStratum[] = [
${strata
  .map(
    (stratum) => `  {
    sex: '${stratum.sex}',
    ageFrom: ${stratum.ageFrom},
    ageBelow: ${stratum.ageBelow},
    n: ${stratum.n},
    fmi: ${figuresText(stratum.fmi)},
    ffmi: ${figuresText(stratum.ffmi)},
    r: ${rounded(stratum.r)},
  },`,
  )
  .join('\n')}
];
`;

const [, script, file] = process.argv;
if (script !== undefined && import.meta.url === pathToFileURL(script).href) {
  if (file === undefined) {
    process.stderr.write('Give the path of the survey’s file: npx tsx lib/cli/derive-references.ts FILE.csv.gz\n');
    process.exitCode = 2;
  } else {
    const target = new URL('../measures/references/us-adults-2011-2018-figures.ts', import.meta.url);
    await writeFile(target, figuresModule(await deriveReferences(await readFile(file))));
    process.stderr.write(`${target.pathname} written\n`);
  }
}
