const error = (code: string, message: string, remedy: string) => ({ code, message, remedy });

const megabytes = (bytes: number): string => `${Math.max(1, Math.ceil(bytes / 1_000_000)).toLocaleString('en')} MB`;

const clinicCalled = (name: string): string => (name === '' ? 'The clinic' : `The clinic “${name}”`);

/** Words about a clinic that cannot be opened, changed or kept. */
export const workspaceErrors = {
  nothingUsable: error(
    'nothing_usable',
    'No row could be used, so there is nothing to show.',
    'Look at the rows that were not accepted: each says what to correct. Nothing was changed.',
  ),
  noFiles: error('no_files', 'No file was chosen.', 'Choose the file of the visit export.'),
  noTables: error(
    'no_tables',
    'None of the chosen files holds a table that is used.',
    'Choose at least one table with a column for the client and one for the date.',
  ),
  planIsStale: error(
    'plan_is_stale',
    'The clinic is not as it was when these files were looked at.',
    'Look at the files again. Nothing was changed.',
  ),
  planDiffers: error(
    'plan_differs',
    'The import did not give the rows of its preview, so it was stopped.',
    'Nothing was changed. This is an error in the program: keep the file and report it.',
  ),
  fileChanged: (name: string) =>
    error(
      'file_changed',
      `${name} changed on the disk since it was looked at.`,
      'Choose the file again, so that you see what would be imported. Nothing was changed.',
    ),
  otherTab: error(
    'other_tab',
    'Another tab changed the clinic in the meantime.',
    'Look at it as it is now, then repeat the step. Nothing was lost.',
  ),
  readerTab: error(
    'reader_tab',
    'Another tab of this browser is open and writes; this one only reads.',
    'Go on in the other tab, or let this one write.',
  ),
  cancelled: error('cancelled', 'The step was stopped.', 'The clinic is as it was.'),
  notKept: error(
    'not_kept',
    'The browser could not keep the change.',
    'Check that the disk is not full and that this browser keeps site data, then try again. The clinic is as it was.',
  ),
  noRoom: (neededBytes: number | null, freeBytes: number | null) =>
    error(
      'no_room',
      neededBytes === null || freeBytes === null
        ? 'The disk, or the part of it that the browser lets this page use, is full.'
        : `This needs about ${megabytes(neededBytes)}; the browser has ${megabytes(freeBytes)} left for this page.`,
      'Make room on the disk, or remove imports and clinics that are not needed any more. The clinic is as it was.',
    ),
  storageDenied: error(
    'denied',
    'This browser lets the page keep nothing, so no clinic can be opened.',
    'Allow site data for this page (private windows and some policies forbid it), then load it again.',
  ),
  storageCleared: error(
    'cleared',
    'What this browser kept for the page was cleared while it was open.',
    'Restore the last backup. If the browser clears its data when it is closed, keep a backup after every session.',
  ),
  storageDamaged: error(
    'damaged',
    'What this browser keeps for the page cannot be read.',
    'Nothing was changed. Restore the last backup, or ask whoever looks after this installation.',
  ),
  newerApp: error(
    'newer_app',
    'A newer version of Driftline is open in another tab.',
    'Load this page again. Nothing was lost.',
  ),
  fileMissing: (name: string) =>
    error(
      'file_missing',
      `The kept copy of ${name} is missing or damaged in this browser.`,
      'Open the clinic without that import, then import the file again; or restore a backup. Other clinics still open.',
    ),
  fileUnreadable: (name: string) =>
    error(
      'file_unreadable',
      `${name} breaks off in the middle, so nobody can say whose rows it holds.`,
      'Take that import out first. Nothing was changed.',
    ),
  newerManifest: (name: string) =>
    error(
      'newer_manifest',
      `${clinicCalled(name)} in this browser was written by a newer version of Driftline.`,
      'Open it with that version. Nothing was changed, and other clinics still open.',
    ),
  unreadableManifest: (name: string) =>
    error(
      'unreadable_manifest',
      `${clinicCalled(name)} cannot be read: its list of imports and settings is damaged.`,
      'Nothing was changed. Restore a backup as a new clinic; other clinics still open.',
    ),
  locked: (name: string) => error('locked', `${clinicCalled(name)} is locked.`, 'Enter its passphrase to open it.'),
  wrongPassphrase: error(
    'wrong_passphrase',
    'The passphrase does not open this.',
    'Check capital letters and the keyboard’s language. Without the passphrase the data cannot be read by anybody.',
  ),
  emptyClinic: error('empty_clinic', 'This clinic holds no file.', 'Import a file, or undo the last step.'),
  nothingToShow: error(
    'empty_clinic',
    'None of the rows in this clinic’s files can be used.',
    'Import a file, or undo the last step where there is one.',
  ),
  noClinic: error(
    'no_clinic',
    'No clinic is kept in this browser.',
    'Import a file, restore a backup, or open the demo clinic.',
  ),
  unknownClinic: error(
    'unknown_clinic',
    'This clinic is not in this browser any more.',
    'Choose another one from the list.',
  ),
  nothingToUndo: error('nothing_to_undo', 'There is nothing to undo.', 'The log shows what was done.'),
  nothingToRedo: error('nothing_to_redo', 'There is nothing to redo.', 'The log shows what was done.'),
  unknownClient: error(
    'unknown_client',
    'No row of this clinic belongs to that client.',
    'Check the spelling of the id.',
  ),
  mergeConflicts: error(
    'merge_conflicts',
    'Both sides changed the same things.',
    'Choose one for each of them. Nothing was changed.',
  ),
  engineDied: error(
    'engine_died',
    'The database in this page broke down, and did so again after it was started anew.',
    'Close other programs and tabs, then load the page again. What was imported is kept.',
  ),
  engineNotStarted: error(
    'engine_not_started',
    'The database of this page could not be started, so no clinic can be shown.',
    'Try again: most often a file was not loaded whole.',
  ),
  demoMissing: error(
    'demo_missing',
    'The demo clinic could not be loaded.',
    'Check that the folder “demo” was copied with the site, then try again.',
  ),
} as const;
