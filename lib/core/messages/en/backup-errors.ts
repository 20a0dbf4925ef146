const error = (code: string, message: string, remedy: string) => ({ code, message, remedy });

/** Why a backup or a workspace file cannot be used. Nothing is changed by any of them. */
export const backupErrors = {
  not_a_backup: error(
    'not_a_backup',
    'This is not a backup or a workspace file of Driftline.',
    'Choose another file. Visit exports go to Import. Nothing was changed.',
  ),
  passphrase_needed: error(
    'passphrase_needed',
    'This file is sealed with a passphrase.',
    'Enter the passphrase with which it was made.',
  ),
  wrong_passphrase: error(
    'wrong_passphrase',
    'The passphrase does not open this file, or the file’s beginning was changed.',
    'Check capital letters and the keyboard’s language. Without the passphrase nobody can read the file.',
  ),
  damaged: error(
    'damaged_backup',
    'This file was changed or damaged since it was made.',
    'Take another copy, or an older backup. Nothing was changed.',
  ),
  cut_short: error(
    'damaged_backup',
    'This file ends too early: it was not copied whole.',
    'Copy it again from where it was made. Nothing was changed.',
  ),
  newer: error(
    'newer_backup',
    'This file was made by a newer version of Driftline.',
    'Open it with that version. Nothing was changed.',
  ),
} as const;
