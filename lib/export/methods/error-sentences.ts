import { PUBLISHED_ERROR } from '../../cohort/published-error';
import type { PrecisionRow, Tier } from '../../cohort/types/precision-row';
import type { MethodsWords } from '../../core/messages/en/methods-paragraph';
import { BETWEEN_DAY_ERROR_1997, GLUEER_1995 } from '../../measures/citations';
import type { Cite } from './citing';
import { reportedPrecision } from './methods-facts';
import type { MethodsInput } from './methods-input';

const degreesOf = ({ tier, outsideDf, dfBetween, dfWithin }: PrecisionRow): number =>
  tier === 5 ? dfWithin : (outsideDf ?? dfBetween);

const earnsNothing = ({ tier, within }: PrecisionRow): boolean => tier <= 2 && within === 0;

/** What rows rest on: those with the same are said together. */
const basisOf = (row: PrecisionRow, factor: number) => ({
  factor,
  df: degreesOf(row),
  people: row.tier === 3 || row.tier === 4 ? null : row.clients,
  provisional: row.provisional && row.tier !== 4,
  earnsNothing: earnsNothing(row),
});

const groupedWords = (
  rows: readonly PrecisionRow[],
  { catalogue }: MethodsInput,
  words: MethodsWords,
): readonly string[] => {
  const atOwn: string[] = [];
  const groups = new Map<string, { readonly basis: ReturnType<typeof basisOf>; readonly rows: string[] }>();
  for (const row of rows) {
    const { name, unit, decimals } = catalogue.measure(row.measure);
    const { lsc, pe, factor, lscInterval: interval } = row;
    if (row.atOwnValues === true) atOwn.push(words.atOwn({ name }));
    else if (lsc !== null && pe !== null && factor !== null) {
      const basis = basisOf(row, factor);
      const key = JSON.stringify(basis);
      const group = groups.get(key) ?? { basis, rows: [] };
      groups.set(key, group);
      const percent = (power: number): number => 100 * Math.expm1(power);
      group.rows.push(
        row.form === 'log'
          ? words.row({
              name: words.relative({ name }),
              unit: '%',
              decimals: 1,
              lsc: percent(lsc),
              interval: interval === null ? null : [percent(interval[0]), percent(interval[1])],
              pe: 100 * pe,
            })
          : words.row({ name, unit, decimals, lsc, interval, pe }),
      );
    }
  }
  return [...[...groups.values()].map((group) => words.restingOn({ ...group.basis, rows: group.rows })), ...atOwn];
};

/** How the error of the reported values was determined, and how large a change must be. */
export const errorSentences = (input: MethodsInput, words: MethodsWords, cite: Cite): readonly string[] => {
  const rows = reportedPrecision(input);
  if (rows.length === 0) return [words.noRows];
  const rowsOf = (...tiers: readonly Tier[]): readonly string[] =>
    groupedWords(
      rows.filter(({ tier }) => tiers.includes(tier)),
      input,
      words,
    );
  const [own, entered, published, repositioning] = [rowsOf(1, 2), rowsOf(3), rowsOf(4), rowsOf(5)];
  const without = rows.filter(({ tier }) => tier === 6);
  const { errorFrom } = input.settings.errorStudy;
  const always = input.settings.errorSource.alwaysT;
  return [
    ...(own.length + repositioning.length === 0 ? [] : [words.ownError({ cite: cite(GLUEER_1995) })]),
    ...(own.length === 0 ? [] : [words.variance]),
    ...(rows.some(earnsNothing) ? [words.varianceOfMeans] : []),
    ...(entered.length + published.length === 0 ? [] : [words.varianceOutside]),
    ...(without.length === rows.length ? [] : [words.threshold({ level: input.level, always }), words.oneReading]),
    ...(input.settings.errorStudy.cautious ? [words.cautious] : []),
    ...(errorFrom === 'everyone' || own.length === 0 ? [] : [words.errorByGroup({ by: errorFrom })]),
    ...(own.length === 0 ? [] : [words.tier.own({ rows: own })]),
    ...(entered.length === 0 ? [] : [words.tier.entered({ rows: entered })]),
    ...(published.length === 0
      ? []
      : [
          words.tier.published({
            rows: published,
            cite: cite(BETWEEN_DAY_ERROR_1997),
            sd: PUBLISHED_ERROR.sd,
            people: PUBLISHED_ERROR.clients,
            df: PUBLISHED_ERROR.df,
          }),
        ]),
    ...(repositioning.length === 0 ? [] : [words.tier.repositioning({ rows: repositioning })]),
    ...(without.length === 0
      ? []
      : [words.tier.none({ names: without.map(({ measure }) => input.catalogue.measure(measure).name) })]),
  ];
};
