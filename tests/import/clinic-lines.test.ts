import { zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { openTables } from '../../lib/import/open-tables';
import { profileTable } from '../../lib/import/profile-table';
import { tooWide } from '../../lib/import/too-wide';
import { clinicFile, HEADINGS } from './clinic-file';
import { useEngine } from './judged';

const engine = useEngine();

const row = (n: number): string =>
  `P-${String(n)},2025-03-0${String(n)},17${String(n)},70.${String(n)},50${String(n)},5${String(n)}`;
const lines = (...all: readonly string[]): string => `${all.join('\n')}\n`;

describe('a line of units under the headings', () => {
  test.each([
    ['plain', ',yyyy-mm-dd,in,lb,Ω,Ω'],
    ['in brackets, dashes where there is none', '-,-,[in],[lb],(Ohm),(Ohm)'],
  ])('gives the columns their units (%s)', async (_, units) => {
    const file = await clinicFile(
      engine(),
      lines('Patient ID,Visit date,Height,Weight,R,Xc', units, 'P-1,2025-03-04,66,150,500,50'),
      ['height_cm', 'weight_kg'],
    );
    expect(file.questions).toEqual([]);
    expect(file.rows).toEqual(['accepted 167.64 68.0388555']);
    expect(file.profile.headerLine).toBe(2);
    expect(file.profile.preamble).toEqual(['Patient ID,Visit date,Height,Weight,R,Xc']);
    expect(file.mapping.header.slice(2, 4)).toEqual(['Height [in]', 'Weight [lb]']);
  });
});

describe('headings in two lines', () => {
  test.each([
    [
      'repeated',
      'Patient,Visit,Body,,Resistance,Resistance,Reactance,Reactance',
      'ID,date,Height (cm),Weight (kg),5 kHz,50 kHz,5 kHz,50 kHz',
    ],
    [
      'written once over several columns',
      'Patient ID,Visit date,Height,Weight,Resistance,,Reactance,',
      ',,(cm),(kg),5 kHz,50 kHz,5 kHz,50 kHz',
    ],
  ])('are put together (%s)', async (_, upper, lower) => {
    const file = await clinicFile(
      engine(),
      lines(upper, lower, 'P-1,2025-03-04,170,70,600,500,40,50', 'P-2,2025-03-05,171,71,610,510,41,51'),
      ['weight_kg', 'r_ohm', 'xc_ohm'],
    );
    expect(file.questions).toEqual([]);
    expect(file.rows).toEqual(['accepted 70.0 500.0 50.0', 'accepted 71.0 510.0 51.0']);
    expect(file.mapping.constants).toEqual([{ to: 'frequency_khz', value: '50' }]);
  });

  test('are not made of headings that are known and a first row without figures', async () => {
    const file = await clinicFile(
      engine(),
      lines('Client,Program,Enrolled on,', 'Ada,Course A,n/a,x', 'Ben,Course B,2025-01-03,y'),
    );
    expect(file.profile.headerLine).toBe(1);
    expect(file.rows).toEqual(['accepted Ada', 'accepted Ben']);
  });

  test('are not made of a header and its first row', async () => {
    const file = await clinicFile(engine(), lines('Client,Program', 'Ada,Course A', 'Ben,Course B'));
    expect(file.profile.headerLine).toBe(1);
    expect(file.rows).toEqual(['accepted Ada', 'accepted Ben']);
  });
});

describe('a line that is no row', () => {
  test('is refused for what it is: headings again, a comment, the end of the report; the rows around it stay', async () => {
    const file = await clinicFile(
      engine(),
      lines(
        HEADINGS,
        row(1),
        `\ufeff${HEADINGS}`,
        row(2),
        '# a comment',
        '# another, with a comma',
        row(3),
        'End of report',
        'Page 1 of 1,,,,,',
      ),
    );
    expect(file.rows.filter((one) => one.startsWith('accepted'))).toEqual([
      'accepted P-1',
      'accepted P-2',
      'accepted P-3',
    ]);
    expect(file.said).toEqual([
      'refused heading_again',
      'refused text_line',
      'refused text_line',
      'refused text_line',
      'refused text_line',
    ]);
  });

  test('is no comment where it has the date of a visit: an id may begin with the mark of comments', async () => {
    const file = await clinicFile(
      engine(),
      lines(HEADINGS, row(1), '#12,2025-03-04,170,70,500,50', '#13,2025-03-04,170,70,500,50,x', '# made 2025-03-04'),
    );
    expect(file.rows).toEqual(['accepted P-1', 'accepted #12', 'refused', 'refused']);
    expect(file.said).toEqual(['refused ragged', 'refused text_line']);
  });

  test('but other headings refuses every row below it until the first headings come again', async () => {
    const other = 'Patient ID,Visit date,Weight (kg),Height (cm),R,Xc';
    const file = await clinicFile(
      engine(),
      lines(HEADINGS, row(1), other, 'P-2,2025-03-02,70,170,500,50', HEADINGS, row(3)),
    );
    expect(file.rows).toEqual(['accepted P-1', 'refused', 'refused', 'refused', 'accepted P-3']);
    expect(file.said).toEqual(['refused other_heading', 'refused other_heading', 'refused heading_again']);
  });

  test('of totals is never a client by itself, and its figures do not raise a question about units', async () => {
    const file = await clinicFile(
      engine(),
      lines(HEADINGS, row(1), row(2), 'Total,,,286,2000,200', 'Mean,2025-03-04,172,71,501,51', 'Std Dev:,,1,1,5,5'),
    );
    expect(file.questions).toEqual([]);
    expect(file.rows).toEqual(['accepted P-1', 'accepted P-2', 'refused Total', 'held Mean', 'refused Std Dev:']);
    expect(file.said.filter((said) => said.includes('summary_row'))).toHaveLength(3);
  });

  test('of totals is known by having no date: a first name that is such a word hides no row from the questions', async () => {
    const file = await clinicFile(
      engine(),
      lines('First name,Patient ID,Visit date,Weight', 'Max,P-1,03/04/2025,165', 'Max,P-1,04/05/2025,170'),
    );
    expect(file.questions.map(({ kind }) => kind)).toContain('date-order');
    expect(file.profile.columns[3]?.range).toEqual({ low: 165, high: 170 });
  });

  test('with empty fields beyond the header is the row that it shows', async () => {
    const file = await clinicFile(engine(), lines(HEADINGS, row(1), `${row(2)},`, `${row(3)},, `));
    expect(file.rows).toEqual(['accepted P-1', 'accepted P-2', 'accepted P-3']);
    const filled = await clinicFile(engine(), lines(HEADINGS, row(1), row(2), `${row(3)},,x`));
    expect(filled.said).toEqual(['refused ragged']);
  });
});

describe('columns of several frequencies', () => {
  test('R and Xc of different ones are no pair: those at 50 kHz are taken', async () => {
    const file = await clinicFile(
      engine(),
      lines('Patient ID,Visit date,Weight (kg),R 100kHz,Xc 50kHz', 'P-1,2025-03-04,70,500,50'),
      ['r_ohm', 'xc_ohm', 'frequency_khz'],
    );
    expect(file.rows).toEqual(['accepted  50.0 50.0']);
    expect(file.plan.files[0]?.unknownColumns).toEqual(['R 100kHz']);
  });

  test('where none is at 50 kHz the frequency is asked, for an unknown one would be read as 50', async () => {
    const content = lines('Patient ID,Visit date,R 5kHz,R 100kHz,Xc 5kHz,Xc 100kHz', 'P-1,2025-03-04,600,500,40,50');
    const { questions } = await clinicFile(engine(), content);
    expect(questions).toContainEqual({ kind: 'missing-column', to: 'frequency_khz' });
    const chosen = await clinicFile(engine(), content, ['r_ohm', 'frequency_khz'], (mapping) => ({
      ...mapping,
      columns: mapping.columns.filter(({ from }) => from[0] !== 2 && from[0] !== 4),
      constants: [{ to: 'frequency_khz', value: '100' }],
    }));
    expect(chosen.questions.filter(({ kind }) => kind !== 'unit')).toEqual([]);
    expect(chosen.rows).toEqual(['accepted 500.0 100.0']);
  });
});

test('records that a file calls withdrawn are no rows, and the plan counts them', async () => {
  const weight = (value: number, status: string) => ({
    resourceType: 'Observation',
    status,
    subject: { reference: 'Patient/p1' },
    effectiveDateTime: '2025-03-04T08:15:00Z',
    code: { coding: [{ system: 'http://loinc.org', code: '29463-7' }] },
    valueQuantity: { value, system: 'http://unitsofmeasure.org', code: '[lb_av]' },
  });
  const lines = [weight(150, 'entered-in-error'), weight(160, 'final')].map((one) => JSON.stringify(one)).join('\n');
  const file = await clinicFile(engine(), lines, ['client_id', 'weight_kg']);
  expect(file.rows).toEqual(['accepted p1 72.5747792']);
  expect(file.plan.files[0]?.leftOut).toBe(1);
});

describe('a file that is no table', () => {
  test('of a million columns is refused within seconds', async () => {
    const opened = await openTables('wide', new Blob(['x,'.repeat(1_000_000)]));
    const [table] = opened.ok ? opened.value : [];
    if (table === undefined) throw new Error('the file was not opened');
    expect(tooWide('wide', await profileTable(table))?.code).toBe('too_wide');
  }, 10_000);

  test('packed to less than any table is refused before it is unpacked', async () => {
    const packed = new Uint8Array(zipSync({ 'visits.csv': new Uint8Array(32 * 1024 * 1024) }));
    const opened = await openTables('visits.zip', new Blob([packed]));
    expect(opened.ok ? 'opened' : opened.error.code).toBe('too_tight');
  });

  test('but a web archive under the name of a workbook is said to be a web page', async () => {
    const opened = await openTables(
      'visits.xls',
      new Blob(['MIME-Version: 1.0\nContent-Type: multipart/related\n\n--x\n<html>']),
    );
    expect(opened.ok ? 'opened' : opened.error.code).toBe('web_page');
  });
});
