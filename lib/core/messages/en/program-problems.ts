interface Problem {
  readonly code: string;
  readonly week?: number;
  readonly from?: number;
  readonly next?: number;
}

const words = {
  'name-missing': () => 'the program needs a name',
  'name-taken': () => 'another program has this name',
  'visits-not-in-order': () => 'the weeks have to rise, each of them once',
  'reviews-not-in-order': () => 'the weeks of the reviews have to rise, each of them once',
  'window-reaches-baseline': ({ week = 0, from = 0 }: Problem) =>
    `the window of week ${String(week)} opens on day ${String(from)}; it has to open after day 7, which a late baseline may lie on: choose a later week or a narrower window`,
  'windows-overlap': ({ week = 0, next = 0 }: Problem) =>
    `the windows of weeks ${String(week)} and ${String(next)} overlap: a visit inside both belongs to the nearer review, ties to the earlier`,
  'phase-ends-first': () => 'the phase has to end after it begins',
  'phases-overlap': () => 'two phases of one value overlap, and their figures would be added',
  'phase-expects-nothing': () => 'the phase lets expect nothing',
};

/** What is wrong with how a program is set, beginning in lower case; an unknown code as it is. */
export const programProblemWords = (problem: Problem): string =>
  Object.hasOwn(words, problem.code) ? words[problem.code as keyof typeof words](problem) : problem.code;
