import type { Locator, Page } from '@playwright/test';
import { chooseFiles, commitPlan } from './import-steps';
import { expect } from './open-screen';
import { visitExport } from './visit-export';

/** A section of Settings by its heading. */
export const section = (page: Page, name: string): Locator => page.getByRole('region', { name, exact: true });

/** Goes to Settings inside the app. */
export const openSettings = async (page: Page): Promise<void> => {
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'Settings', exact: true }).click();
  await expect(section(page, 'Clinics')).toBeVisible();
};

/** Answers the question for initials, which comes before the first change. */
export const signAs = async (page: Page, initials: string): Promise<void> => {
  const dialog = page.getByRole('dialog', { name: 'Who is doing this?' });
  await dialog.getByLabel('Your initials').fill(initials);
  await dialog.getByRole('button', { name: 'Sign and go on' }).click();
  await expect(dialog).toHaveCount(0);
};

/** Writes a passphrase twice, as a new one is asked for. */
export const typeTwice = async (place: Locator, passphrase: string): Promise<void> => {
  await place.getByLabel('New passphrase').fill(passphrase);
  await place.getByLabel('The same again').fill(passphrase);
};

/** Makes a backup under Settings; null for one without a passphrase. Gives the file's path. */
export const backUp = async (page: Page, passphrase: string | null): Promise<string> => {
  const keeping = section(page, 'Keeping');
  const seal = keeping.getByLabel('Seal it with a passphrase');
  if (passphrase === null) await seal.uncheck();
  else {
    await seal.check();
    await typeTwice(keeping, passphrase);
  }
  const saving = page.waitForEvent('download');
  await keeping.getByRole('button', { name: 'Back up to a file' }).click();
  return (await saving).path();
};

/** Begins a clinic of a few clients from a file, unsigned, and goes to Settings. */
export const beginClinic = async (page: Page, name: string): Promise<void> => {
  await chooseFiles(page, [{ name: 'visits.csv', content: visitExport({ clients: 12 }) }]);
  await page.getByLabel('Name of your clinic').fill(name);
  await commitPlan(page);
  await openSettings(page);
};
