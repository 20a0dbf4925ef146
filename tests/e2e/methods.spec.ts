import { readFileSync } from 'node:fs';
import { test, type Locator, type Page } from '@playwright/test';
import { downloadBy } from './support/download-by';
import { compositionExport } from './support/foreign-exports';
import { chooseFiles, commitPlan, expectStep } from './support/import-steps';
import { test as onDemo } from './support/open-clinic';
import { expect, follow, openScreen } from './support/open-screen';
import { section, signAs } from './support/settings-steps';

test.describe.configure({ timeout: 240_000 });
onDemo.describe.configure({ timeout: 240_000 });

/** An invented man; his fat-free mass is the arithmetic of Kyle 2001 (59.5573 kg). */
const typeMan = async (place: Page | Locator): Promise<void> => {
  await place.getByLabel('Weight, kg').fill('80');
  await place.getByLabel('Height, cm').fill('178');
  await place.getByLabel('Resistance, Ω').fill('480');
  await place.getByLabel('Reactance, Ω').fill('52');
  await place.getByLabel('Sex coding').selectOption('M (men)');
};

onDemo(
  'says what computes fat-free mass, for whom it was made, and how far other equations lie from it',
  async ({ page }) => {
    await openScreen(page, '/methods/');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(
      /^Fat-free mass is computed by Kyle 2001; \d[\d,]* of \d[\d,]* visits lie inside the group it was made for/,
    );
    const inForce = section(page, 'In force');
    await expect(inForce.getByLabel('Equation for fat-free mass')).toHaveValue('ffm-kyle-2001');
    await expect(inForce).toContainText('posture (made lying, measured standing)');
    const agreement = section(page, 'Exported against computed');
    await expect(agreement).toContainText(/Exported fat-free mass differs from the computed by [+−]?\d+\.\d\d\u00A0kg/);
    await expect(agreement.locator('figure [data-key]').first()).toBeVisible();
    const compare = section(page, 'Compare equations');
    await expect(compare).toContainText('Against Kyle 2001, other equations put the fat-free mass of the same people');
    await expect(compare.locator('figure [data-key="ffm-deurenberg-1991"]')).toBeVisible();
    await expect(compare.locator('figure [data-key="ffm-sun-2003"]')).toHaveCount(0);
    await compare.getByLabel('Also equations from memory, for comparison only').check();
    await expect(compare.locator('figure [data-key="ffm-sun-2003"]')).toBeVisible();
  },
);

onDemo(
  'the catalogue is searched by author and narrowed by what is checked; an entry has an address and a calculator',
  async ({ page }) => {
    await openScreen(page, '/methods/');
    const entries = section(page, 'All entries');
    await entries.getByLabel('Search a name, author, quantity or population').fill('Bolonchuk');
    await expect(entries.getByRole('row').filter({ hasText: 'Lukaski & Bolonchuk 1988' }).first()).toBeVisible();
    await entries.getByLabel('Search a name, author, quantity or population').fill('');
    await entries.getByRole('radio', { name: 'body water' }).check();
    await expect(page).toHaveURL(/about=water/);
    await entries.getByRole('radio', { name: 'from memory' }).check();
    await expect(entries.getByRole('row').filter({ hasText: 'Kyle 2001' })).toHaveCount(0);
    await entries.getByRole('radio', { name: 'all', exact: true }).first().check();
    await entries.getByRole('radio', { name: 'all', exact: true }).last().check();
    await entries.getByLabel('Search a name, author, quantity or population').fill('Kyle 2001');
    await entries.getByRole('link', { name: 'Kyle 2001', exact: true }).click();
    await expect(page).toHaveURL(/entry=ffm-kyle-2001/);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Kyle 2001');
    await expect(page.locator('math')).toContainText('FFM=−4.104+0.518·H2R');
    await expect(page.getByRole('main')).toContainText(/Ancestry of the group\s*white/);
    const source = page.getByRole('link', { name: /^doi 10\.1016/ });
    await expect(source).toHaveAttribute('rel', /noreferrer/);
    const calculator = page.getByRole('region', { name: 'Calculator' });
    await expect(calculator).toContainText('Fat-free mass: unknown');
    await typeMan(calculator);
    await expect(calculator).toContainText('Fat-free mass: 59.6\u00A0kg');
    await expect(calculator).not.toContainText('Outside the group');
    await calculator.getByLabel('Weight, kg').fill('120');
    await expect(calculator).toContainText('Outside the group the equation was made for (body mass index)');
    await calculator.getByLabel('Reactance, Ω').fill('');
    await expect(calculator).toContainText('Missing: Reactance.');
  },
);

onDemo('energy is resting energy times a physical activity level that is typed in', async ({ page }) => {
  await openScreen(page, '/methods/?entry=ree-schofield-1985');
  const calculator = page.getByRole('region', { name: 'Calculator' });
  await calculator.getByLabel('Weight, kg').fill('80');
  await calculator.getByLabel('Age, years').fill('40');
  await calculator.getByLabel('Sex coding').selectOption('M (men)');
  await expect(calculator).toContainText('Resting energy expenditure, REE: 1,791\u00A0kcal/d');
  await calculator.getByLabel('Physical activity level (PAL)').fill('1.7');
  await expect(calculator).toContainText('REE × PAL: 3,044\u00A0kcal/d (active or moderately active)');
});

test('a calculated index is placed by the cut-offs of its own equation, and a clinic that does not offer one sees none', async ({
  page,
}) => {
  await openScreen(page, '/methods/?entry=value-smi');
  const calculator = page.getByRole('region', { name: 'Calculator' });
  await calculator.getByLabel('Height, cm').fill('178');
  await calculator.getByLabel('Resistance, Ω').fill('480');
  await calculator.getByLabel('Age, years').fill('65');
  await expect(calculator).not.toContainText('In the range');
  await calculator.getByLabel('Sex coding').selectOption('M (men)');
  await expect(calculator).toContainText(
    'Janssen 2004, SMM/H²: In the range with moderate odds of physical disability',
  );
  await expect(calculator).toContainText('no diagnosis');
  await calculator.getByLabel('Age, years').fill('45');
  await expect(calculator).toContainText('No cut-off that is offered here was made for this value');
  await openScreen(page, '/methods/?entry=cut-off-smi-janssen-2004');
  await page.getByLabel('Offered in this clinic').click();
  await signAs(page, 'MR');
  await expect(page.getByText('Janssen 2004, SMM/H² is no longer offered. Undo brings it back.')).toBeVisible();
  await openScreen(page, '/methods/?entry=value-smi');
  await calculator.getByLabel('Height, cm').fill('178');
  await calculator.getByLabel('Resistance, Ω').fill('480');
  await calculator.getByLabel('Age, years').fill('65');
  await calculator.getByLabel('Sex coding').selectOption('M (men)');
  await expect(calculator).toContainText('No cut-off that is offered here was made for this value');
});

test('an equation from memory has to be switched on before it can be chosen; what it computes carries the mark; undo takes it back', async ({
  page,
}) => {
  await openScreen(page, '/methods/');
  const inForce = section(page, 'In force');
  const choice = inForce.getByLabel('Equation for appendicular skeletal muscle mass');
  const offered = choice.getByRole('option', { name: 'Sergi 2015' });
  await expect(offered).toBeDisabled();
  await inForce.getByText(/more for appendicular skeletal muscle mass, from memory/).click();
  const switchOn = inForce.getByRole('button', { name: 'Switch on Sergi 2015' });
  await expect(switchOn).toBeDisabled();
  await inForce.getByLabel('Every figure of Sergi 2015 was compared with the paper').check();
  await switchOn.click();
  await signAs(page, 'MR');
  await expect(offered).toBeEnabled();
  await choice.selectOption('Sergi 2015');
  const value = page.getByRole('form', { name: 'What is shown' }).getByLabel('Value');
  const marked = 'appendicular skeletal muscle mass (equation from memory)';
  await expect(value.getByRole('option', { name: marked, exact: true })).toBeAttached();
  await expect(choice).toHaveValue('asm-sergi-2015');
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'Repeatability' }).click();
  await expect(page.getByRole('row').filter({ hasText: marked })).toBeVisible();
  const download = await downloadBy(page, () =>
    page.getByRole('button', { name: 'Save table as CSV' }).first().click(),
  );
  expect(readFileSync(await download.path(), 'utf8')).toContain(marked);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.getByText('Undone: Settings changed.')).toBeVisible();
  await expect(value.getByRole('option', { name: marked, exact: true })).toHaveCount(0);
});

test('a clinic enters an equation of its own, is told what is missing, computes with it, and takes it along as a file', async ({
  page,
}) => {
  await openScreen(page, '/methods/');
  const own = section(page, 'The clinic’s own equation');
  await own.getByRole('button', { name: 'New equation' }).click();
  await own.getByRole('button', { name: 'Save as version 1' }).click();
  await expect(own.getByLabel('Name (first author and year)')).toHaveAccessibleDescription(/Give a name/);
  await own.getByLabel('Name (first author and year)').fill('Oremoor 2024');
  await own.getByLabel('Constant').fill('10');
  await own.getByLabel('Coefficient').fill('0.6');
  await own.getByRole('button', { name: 'Add a term' }).click();
  await own.getByLabel('Coefficient').nth(1).fill('0.1');
  await own.getByLabel('times').nth(1).selectOption('weight (kg)');
  // 10 + 0.6·178²/480 + 0.1·80 by hand.
  await expect(own).toContainText('Worked value: 57.61\u00A0kg for a man');
  await own.getByLabel('Group it was made for, in words').fill('adults of this clinic');
  await own.getByLabel('Reference method').fill('DXA');
  await own.getByLabel('Authors, separated by commas').fill('Doe J');
  await own.getByLabel('Journal or publisher').fill('Oremoor Clinic');
  await own.getByLabel('Year', { exact: true }).fill('2024');
  await own.getByRole('button', { name: 'Save as version 1' }).click();
  await signAs(page, 'MR');
  await expect(own.getByRole('link', { name: 'Oremoor 2024' })).toBeVisible();
  const download = await downloadBy(page, () => own.getByRole('button', { name: 'Save Oremoor 2024 as JSON' }).click());
  expect(JSON.parse(readFileSync(await download.path(), 'utf8'))).toMatchObject({
    id: 'own-oremoor-2024',
    version: 1,
    verification: 'entered-by-clinic',
  });
  await section(page, 'In force').getByLabel('Equation for fat-free mass').selectOption('Oremoor 2024');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Fat-free mass is computed by Oremoor 2024');
  await expect(
    page
      .getByRole('form', { name: 'What is shown' })
      .getByRole('option', { name: 'fat mass index (equation entered by the clinic)', exact: true }),
  ).toBeAttached();
  await expect(own.getByRole('button', { name: 'Remove Oremoor 2024' })).toBeDisabled();
  const mark = 'equation entered by the clinic';
  const tableOf = async (place: Page | Locator): Promise<string> => {
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      place.getByRole('button', { name: 'Save table as CSV' }).last().click(),
    ]);
    return readFileSync(await file.path(), 'utf8');
  };
  await follow(page, '/programs/');
  const share = 'visits lie inside the group that Oremoor 2024 was made for';
  await expect(page.locator('figcaption').first()).toContainText(share);
  const everyProgram = page.getByRole('region', { name: 'Every program, in numbers' });
  const programsFile = await tableOf(everyProgram);
  expect(programsFile).toContain('Value,Equation,Visits with the value,Visits inside the group of the equation');
  expect(programsFile).toContain(`fat-free mass (${mark}),Oremoor 2024,`);
  expect(await tableOf(page.getByRole('region', { name: 'Against error alone' }))).toContain(mark);
  await follow(page, '/indices/');
  await expect(page.locator('figcaption').first()).toContainText(share);
  const indices = `fat-free mass index (${mark}) and fat mass index (${mark}),Oremoor 2024,`;
  expect(await tableOf(page.getByRole('region', { name: 'By program' }))).toContain(indices);
  expect(await tableOf(page.getByRole('region', { name: 'Every point' }))).toContain(indices);
  await page.getByRole('region', { name: 'Every point' }).getByRole('link').first().click();
  await expect(page.getByRole('figure', { name: 'Index path' })).toContainText(`(Doe J. Oremoor Clinic 2024), ${mark}`);
  expect(await tableOf(page.getByRole('region', { name: /^Every comparison/ }))).toContain(`fat-free mass (${mark})`);
  await page.getByRole('link', { name: 'Page for the client' }).click();
  await expect(page.getByRole('main')).toContainText('The rule that gives this number was put in by our clinic.');
});

onDemo(
  'the methods paragraph has its references as BibTeX and CSL-JSON, and the page prints what is in force',
  async ({ page }) => {
    await openScreen(page, '/methods/');
    const report = section(page, 'For a report or paper');
    await expect(report).toContainText('Kyle 2001');
    await expect(report.getByRole('heading', { name: 'References' })).toBeVisible();
    const save = async (name: string): Promise<string> => {
      const download = await downloadBy(page, () => report.getByRole('button', { name }).click());
      return readFileSync(await download.path(), 'utf8');
    };
    expect(await save('Save references as BibTeX')).toMatch(/@article\{[^,]+,/);
    const items = JSON.parse(await save('Save references as CSL-JSON')) as readonly { readonly DOI?: string }[];
    expect(items.map(({ DOI }) => DOI)).toContain('10.1016/S0899-9007(00)00553-0');
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByText('visits lie inside the group it was made for').first()).toBeVisible();
    await expect(report).toBeVisible();
    await expect(section(page, 'All entries')).toBeHidden();
    await expect(page.getByRole('button', { name: 'New equation' })).toBeHidden();
  },
);

test('a clinic whose export holds no impedance is told what equations need, and can still read the catalogue', async ({
  page,
}) => {
  await chooseFiles(page, [{ name: 'composition.csv', content: compositionExport() }]);
  await expectStep(page, 'can be used as they are');
  await commitPlan(page);
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'Methods' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(
    'Fat-free mass cannot be computed from this data: no visit holds what an equation needs.',
  );
  await expect(section(page, 'Exported against computed')).toContainText('No visit holds a value twice');
  await expect(section(page, 'Compare equations')).toContainText('No visit under these filters holds');
  await page.goto('/methods/?entry=ffm-kyle-2001');
  const calculator = page.getByRole('region', { name: 'Calculator' });
  await typeMan(calculator);
  await expect(calculator).toContainText('Fat-free mass: 59.6\u00A0kg');
});

const REFERENCE = `# name: Our volunteers
# population: 210 healthy volunteers of our town
# posture: lying
# electrode_path: hand-to-foot
# frequency_khz: 50
SOURCE
kind,sex,age_from,age_below,n,mean_r_h,sd_r_h,mean_xc_h,sd_xc_h,r
vector,F,18,60,100,370.5,48,34,7.5,0.51
vector,M,18,,60,300,40,31,7,0.5
`;

test('a reference population of the clinic is refused without its source, and stands in the catalogue with it', async ({
  page,
}) => {
  await openScreen(page, '/methods/');
  const entries = section(page, 'All entries');
  const file = entries.getByLabel('Read a reference population from a CSV or JSON file');
  const give = (source: string): Promise<void> =>
    file.setInputFiles({
      name: 'ours.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(REFERENCE.replace('SOURCE\n', source)),
    });
  await give('');
  await expect(entries.getByRole('alert')).toBeVisible();
  await expect(entries.getByRole('link', { name: 'Our volunteers' })).toHaveCount(0);
  await give('# authors: Example A, Sample B\n# year: 2024\n# journal: Journal of Examples\n');
  await signAs(page, 'MR');
  await entries.getByRole('listitem').getByRole('link', { name: 'Our volunteers' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Our volunteers');
  await expect(page.getByRole('main')).toContainText('entered by the clinic');
  await expect(page.getByRole('cell', { name: '370.5 (48.0)' })).toBeVisible();
});
