import type { Formatters } from '../../formatters';

/** Settings: the clinic's one value for lean tissue, and its limit for the lean share of a loss. */
export const settingsLean = (f: Formatters) => ({
  lead: 'One value decides whom to talk to, so that one loss is never counted twice. It stands first on every screen.',
  value: 'Value for lean tissue',
  saved: 'Saved. Lists and results are counted anew.',
  forChange:
    'Every visit here was measured standing, and the equation of the computed values was made lying: their levels cannot be read, only their changes. Where your device exports fat-free mass, that value can lead instead.',
  expected: (p: { programs: number; value: string }) =>
    f.plural(
      p.programs,
      `One program says what it lets expect of another value, and nothing of ${p.value}: enter it under Programs, or nothing is taken off.`,
      `# programs say what they let expect of another value, and nothing of ${p.value}: enter it under Programs, or nothing is taken off.`,
    ),
  limit: 'Limit for the lean share of a loss, %',
  limitHint:
    'After a loss of 5 % or more, Talk to names whose lean share lies above it with its whole interval. There is no default: no limit has a source that fits every program. Empty: the share is not looked at.',
  limitWrong: 'A number above 0 and up to 100, or nothing.',
  limitSave: 'Keep the limit',
});
