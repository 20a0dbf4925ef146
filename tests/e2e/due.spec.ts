import { readFileSync } from 'node:fs';
import { downloadBy } from './support/download-by';
import { test } from './support/open-clinic';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

test('Invite and Not seen since are lists of their own; names leave only after a warning', async ({ page }) => {
  await openScreen(page, '/contact/');
  const invite = page.getByRole('region', { name: 'Invite', exact: true });
  const gone = page.getByRole('region', { name: 'Not seen since' });
  await expect(invite.getByRole('listitem').first()).toContainText(
    /(Visit|Review) of week \d+ was due on .* weeks ago/,
  );
  await gone.getByRole('button', { name: /^all \d+$/ }).click();
  await expect(gone.getByRole('listitem').filter({ hasText: 'OM-0155' })).toContainText('not seen since 28 April 2025');
  await invite.getByRole('button', { name: /^all \d+$/ }).click();
  await expect(invite).not.toContainText('OM-0155');
  await invite.getByRole('button', { name: /letter system/ }).click();
  const dialog = page.getByRole('dialog', { name: 'Names leave this app' });
  await expect(dialog).toContainText(/holds \d+ clients with id, name/);
  const file = await downloadBy(page, () => dialog.getByRole('button', { name: 'Save the file with names' }).click());
  expect(file.suggestedFilename()).toMatch(/^driftline-invitations-[0-9a-f]{6}\.csv$/);
  const lines = readFileSync(await file.path(), 'utf8')
    .trim()
    .split('\r\n');
  expect(lines[0]).toContain('client_id,family_name,given_name,program,planned');
  expect(lines.length - 1).toBe(await invite.getByRole('listitem').count());
});

test('the visit sheet has a page a day with how each was measured last; the checklist is general', async ({ page }) => {
  await openScreen(page, '/visit-sheet/?when=next-week');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(/\d+ people are due this week, \d+ next week\./);
  const monday = page.getByRole('region', { name: 'Monday, 5 January 2026' });
  await expect(monday.getByRole('listitem').first()).toContainText(
    /Unit [QH] · hand-electrode position .* · standing · right side · height/,
  );
  await expect(page.locator('body')).not.toContainText(/pregnan|menstru/i);
  const main = page.getByRole('main');
  for (const when of ['Next week', 'Overdue']) {
    await page.getByRole('radio', { name: new RegExp(`^${when}`) }).check();
    const days = await main.getByRole('region').count();
    const pdf = (await page.pdf({ format: 'A4' })).toString('latin1');
    expect([when, pdf.match(/\/Type\s*\/Page[^s]/g)?.length]).toEqual([when, days]);
  }
  await expect(main.getByRole('region', { name: /^Overdue, without a day, page 1 of \d/ })).toBeVisible();
  await expect(main).toContainText(/Cautions\s*Fluid was collected in the body/);
  await expect(page).toHaveTitle(/^Visit sheet/);
  await page.getByRole('link', { name: 'Checklists for the room' }).click();
  const standing = page.getByRole('region', { name: 'Before a reading, standing' });
  await expect(standing).toContainText('Nothing eaten for 8 hours.');
  await expect(standing).toContainText('Common practice, no source.');
});
