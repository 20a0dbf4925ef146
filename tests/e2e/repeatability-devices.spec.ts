import { test } from '@playwright/test';
import { openClient } from './support/open-client';
import { signAs } from './support/settings-steps';
import { expect, openScreen } from './support/open-screen';

test.describe.configure({ timeout: 180_000 });

test('a cross-check is accepted with initials, and the device log draws what was entered', async ({ page }) => {
  await openScreen(page, '/repeatability/');
  const check = page.getByRole('region', { name: 'Unit Q minus Unit H' });
  await expect(check).toContainText('32 people on both devices');
  const accept = check.getByRole('button', { name: 'Accept: compare with conversion' });
  await expect(accept).toBeDisabled();
  await check.getByLabel('Your initials').fill('AB');
  await accept.click();
  await signAs(page, 'AB');
  await expect(check).toContainText(/Accepted on .* by AB, from 32 people/);

  const log = page.getByRole('region', { name: 'Device log' });
  await expect(log).toContainText('All 43 readings from 10 Mar 2025 on lie above the mean: this looks like a step.');
  const unit = log.getByRole('region', { name: /^Unit H/ });
  await expect(unit.locator('svg .band')).toHaveCount(1);
  await unit.getByText('A step: from this day on it measures differently').click();
  await expect(unit.getByLabel('Date')).toHaveValue('2025-03-10');
  await unit.getByLabel('Reason').fill('service');
  await unit.getByRole('button', { name: 'Mark the step' }).click();
  await expect(unit).toContainText('Step on 10 Mar 2025: service (AB).');
  await expect(unit).toContainText(
    'mean and limits from the first 20 and the first 20 from the step of 10 Mar 2025 on.',
  );
  await expect(unit).toContainText('A marked step divides the readings');
  await expect(unit).not.toContainText('this looks like a step');
  await expect(unit.locator('svg .band')).toHaveCount(2);
  await unit.getByRole('button', { name: 'Take the step back' }).click();
  await expect(unit).toContainText('All 43 readings from 10 Mar 2025 on lie above the mean: this looks like a step.');
  await expect(unit.locator('svg .band')).toHaveCount(1);

  await log.getByLabel('Device', { exact: true }).fill('Unit S');
  for (const r of ['400.1', '400.3']) {
    await log.getByLabel('R (Ω)').fill(r);
    await log.getByRole('button', { name: 'Enter' }).click();
    await expect(log.getByText('Entered.')).toBeVisible();
    await expect(log.getByLabel('R (Ω)')).toHaveValue('');
  }
  await expect(log.getByRole('heading', { name: 'Unit S, test body: does it still measure the same?' })).toBeVisible();
  await expect(log.getByRole('region', { name: /^Unit S/ })).toContainText('All readings lie inside the limits.');

  await openClient(page, 'OM-0071');
  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    /^Fat-free mass has moved by .* since 2 September 2024: within this clinic’s measurement error/,
  );
  await expect(page.getByRole('grid', { name: 'Every comparison of fat-free mass' })).toContainText(
    'converted between devices by the cross-check',
  );
});
