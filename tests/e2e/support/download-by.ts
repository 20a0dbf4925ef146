import type { Download, Page } from '@playwright/test';

/** The file that an act hands over; unsigned, where a profile without initials is asked whose it is. */
export const downloadBy = async (page: Page, act: () => Promise<void>): Promise<Download> => {
  const download = page.waitForEvent('download');
  await act();
  const skip = page.getByRole('dialog', { name: 'Who is doing this?' }).getByRole('button', { name: 'Go on without' });
  const asks = await Promise.race([
    download.then(() => false),
    skip.waitFor().then(
      () => true,
      () => false,
    ),
  ]);
  if (asks) await skip.click();
  return download;
};
