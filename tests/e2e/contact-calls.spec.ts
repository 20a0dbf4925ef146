import { test, type Page } from '@playwright/test';
import { openClient } from './support/open-client';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ mode: 'serial', timeout: 180_000 });

let page: Page;

test.beforeAll(async ({ browser }) => {
  page = await browser.newPage();
  await openScreen(page, '/contact/');
});
test.afterAll(() => page.close());

const talk = () => page.getByRole('region', { name: 'Talk to' });
const call = (client: string, outcome: string) =>
  page.getByRole('group', { name: `After the call with ${client}` }).getByRole('button', { name: outcome });

test('a call that was explained lets the row rest until the next visit, signed, and counts for its rules', async () => {
  await call('OM-0023', 'Explained').click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('textbox').fill('AB');
  await dialog.getByRole('button', { name: 'Sign' }).click();
  const spoken = talk().getByText('Spoken about: 1, until their next visit');
  await expect(spoken).toBeVisible();
  await expect(talk()).toContainText(/Explained on .*, AB; about the visit of 12 December 2025/);
  await expect(page.getByRole('group', { name: 'After the call with OM-0023' })).toHaveCount(0);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('4 people to talk to');
  await expect(
    page.getByRole('region', { name: 'What each rule looked at' }).getByRole('row', { name: 'Change beyond error' }),
  ).toContainText(/5\s*1\s*0\s*1\s*0\s*0$/);
});

test('who was not reached stays on the list, and it is said', async () => {
  await call('OM-0058', 'Not reached').click();
  const row = talk().getByRole('listitem').filter({ hasText: 'OM-0058' });
  await expect(row).toContainText(/Not reached on .*, AB\. The row stays\./);
  await expect(call('OM-0058', 'Confirmed')).toBeEnabled();
});

test('undo brings the row back, as does taking back', async () => {
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(talk().getByRole('listitem').filter({ hasText: 'OM-0058' })).not.toContainText('Not reached on');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('5 people to talk to');
  await call('OM-0023', 'Not useful').click();
  await page.getByRole('button', { name: 'Take back what came of the call with OM-0023' }).click();
  await expect(talk().getByRole('listitem').first()).toContainText('OM-0023');
});

test('the calls of a week end at a quiet line', async () => {
  await talk().getByRole('textbox', { name: 'Calls a week' }).fill('2');
  await talk().getByRole('button', { name: 'Save' }).click();
  await expect(talk().getByText('2 calls this week end here.')).toBeVisible();
});

test('another baseline is chosen by a person, said on the client’s page, and taken back there', async () => {
  const again = page.getByRole('region', { name: 'Measure again' });
  await again.getByRole('button', { name: /^all \d+$/ }).click();
  await again.getByRole('button', { name: 'Use 8 December 2025 as baseline of OM-0066' }).click();
  await expect(again.getByRole('link', { name: 'OM-0066' })).toHaveCount(0);
  await openClient(page, 'OM-0066');
  const chosen = page.getByText(
    'Baseline chosen by a person: 8 December 2025. By date alone it would be 10 June 2025.',
  );
  await expect(chosen).toBeVisible();
  await page.getByRole('button', { name: 'Back to the baseline by date' }).click();
  await expect(chosen).toHaveCount(0);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('cannot be compared with 10 June 2025');
});

test('a rule whose calls were mostly not useful offers other settings; the list follows, and undo takes it back', async () => {
  await page.getByRole('navigation', { name: 'Screens' }).getByRole('link', { name: 'To contact' }).click();
  await page.getByLabel('Error at').selectOption('80');
  const heading = page.getByRole('heading', { level: 1 });
  const rules = page.getByRole('region', { name: 'What each rule looked at' });
  const raise = rules.getByRole('button', { name: /^List a first sight only from/ });
  const listed = async (): Promise<number> =>
    Number(await rules.getByRole('row', { name: 'Change beyond error' }).getByRole('cell').nth(2).innerText());
  const again = async (): Promise<number> => Number(/, (\d+) to measure again/.exec(await heading.innerText())?.[1]);
  const row = (client: string) => talk().getByRole('group', { name: `After the call with ${client}` });
  await expect(heading).toContainText('8 people to talk to');
  const before = { listed: await listed(), again: await again() };
  expect(before.listed).toBe(8);

  const called = ['OM-0023', 'OM-0028', 'OM-0521', 'OM-0058', 'OM-0036'];
  for (const [place, client] of called.entries()) {
    await expect(raise).toHaveCount(0);
    await call(client, 'Not useful').click();
    await expect(heading).toContainText(`${String(7 - place)} people to talk to`);
  }
  await expect(rules).toContainText('of 5 people spoken to, 5 were not useful. Nothing changes by itself.');
  await expect(rules).toContainText('From 130 % on one row goes to Measure again.');
  await expect(rules).toContainText('Without it 3 rows leave the present list');
  expect(await listed()).toBe(before.listed);
  expect(await again()).toBe(before.again);

  await expect(row('OM-0375')).toBeVisible();
  await raise.click();
  await expect(rules.getByRole('status')).toHaveText('Changed; undo takes it back.');
  await expect(row('OM-0375')).toHaveCount(0);
  await expect(heading).toContainText(`2 people to talk to, ${String(before.again + 1)} to measure again`);
  expect(await listed()).toBe(before.listed - 1);
  await expect(rules).toContainText(/A first sight under 130\s%/);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(row('OM-0375')).toBeVisible();
  await expect(heading).toContainText(`3 people to talk to, ${String(before.again)} to measure again`);
  await expect(rules).toContainText(/A first sight under 115\s%/);

  await rules.getByRole('button', { name: 'Switch off “Change beyond error and expectation”' }).click();
  await expect(rules).toContainText('Change beyond error and expectation: switched off.');
  await expect(heading).toContainText('One person to talk to');
  await expect(talk().getByText('Spoken about: 4, until their next visit')).toBeVisible();
  await expect(row('OM-0250')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(heading).toContainText('3 people to talk to');
  await expect(talk().getByText('Spoken about: 5, until their next visit')).toBeVisible();
  await expect(raise).toBeVisible();
});
