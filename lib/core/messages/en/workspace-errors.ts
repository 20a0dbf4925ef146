const error = (code: string, message: string, remedy: string) => ({ code, message, remedy });

/** Words about a clinic that cannot be opened or kept. */
export const workspaceErrors = {
  nothingUsable: error(
    'nothing_usable',
    'No row could be used, so there is nothing to show.',
    'Look at the rows that were not accepted: each says what to correct. Nothing was changed.',
  ),
  noFiles: error('no_files', 'No file was chosen.', 'Choose the CSV file of the visit export.'),
  planIsStale: error(
    'plan_is_stale',
    'The files of this plan are not at hand any more.',
    'Choose the files again. Nothing was changed.',
  ),
  otherTab: error(
    'other_tab',
    'Another tab changed the clinic in the meantime.',
    'Reload this page to see it, then repeat the step. Nothing was lost.',
  ),
  notKept: error(
    'not_kept',
    'The browser could not keep the file.',
    'Check that the disk is not full and that this browser keeps site data, then try again. The clinic is as it was.',
  ),
  fileMissing: (name: string) =>
    error(
      'file_missing',
      `The kept copy of ${name} is missing or damaged in this browser.`,
      'Import the file again. The demo clinic still opens.',
    ),
  newerManifest: error(
    'newer_manifest',
    'The clinic in this browser was written by a newer version of Driftline.',
    'Open it with that version. Nothing was changed.',
  ),
  unreadableManifest: error(
    'unreadable_manifest',
    'The list of imported files in this browser cannot be read.',
    'Nothing was changed. Keep the browser’s data and ask whoever looks after this installation.',
  ),
  demoMissing: error(
    'demo_missing',
    'The demo clinic could not be loaded.',
    'Check that the folder “demo” was copied with the site, then try again.',
  ),
} as const;
