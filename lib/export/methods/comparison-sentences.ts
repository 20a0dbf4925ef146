import { rulesInForce } from '../../cohort/rules-in-force';
import type { MethodsWords } from '../../core/messages/en/methods-paragraph';
import { reasons } from '../../core/messages/en/reasons';
import { ESPEN_2004 } from '../../measures/citations';
import type { ComparabilityRule, RuleGrade } from '../../measures/comparability-rule';
import type { Cite } from './citing';
import { leanOf, reportsComposition, reportsExported } from './methods-facts';
import type { MethodsInput } from './methods-input';

const ruleSentences = (input: MethodsInput, words: MethodsWords): readonly string[] => {
  const { summary, settings, comparable } = input;
  const coverage = new Map(summary.coverage.map((entry) => [entry.rule, entry]));
  const applied = rulesInForce(settings).filter(
    ({ grade, onlyExported }) =>
      (grade === 'no' || grade === 'caution') && (onlyExported !== true || reportsExported(input)),
  );
  const isHeld = ({ id }: ComparabilityRule): boolean => {
    const entry = coverage.get(id);
    return entry === undefined || entry.recorded + entry.byProcedure + entry.unknown > 0;
  };
  const named = (rules: readonly ComparabilityRule[]): readonly string[] =>
    rules.map(({ id }) => reasons.condition[id]);
  const graded = (grade: RuleGrade): readonly string[] =>
    named(applied.filter((rule) => rule.grade === grade && isHeld(rule)));
  const absent = named(applied.filter((rule) => !isHeld(rule)));
  const procedure = applied.flatMap(({ id }) => {
    const n = coverage.get(id)?.byProcedure ?? 0;
    return n === 0 ? [] : [{ condition: reasons.condition[id], n }];
  });
  if (comparable === 'all') return [];
  return [
    ...(graded('no').length === 0 ? [] : [words.ruledOut({ conditions: graded('no') })]),
    ...(graded('caution').length === 0 ? [] : [words.cautioned({ conditions: graded('caution') })]),
    ...(absent.length === 0 ? [] : [words.notLookedAt({ conditions: absent, readings: summary.readings })]),
    ...(procedure.length === 0 ? [] : [words.byProcedure({ all: procedure, readings: summary.readings })]),
  ];
};

/** Which pairs of visits took part, under which setting and rules, and what was not judged. */
export const comparisonSentences = (input: MethodsInput, words: MethodsWords, cite: Cite): readonly string[] => {
  const { summary, catalogue, comparable } = input;
  const value = catalogue.measure(leanOf(input)).name;
  const { all } = summary.pairsBySetting;
  return [
    words.setting[comparable],
    all === 0 ? words.noPairs({ value }) : words.pairs({ value, admitted: summary.pairsBySetting[comparable], all }),
    ...ruleSentences(input, words),
    ...(reportsComposition(input) ? [words.guards, words.bodyMass({ cite: cite(ESPEN_2004) })] : []),
  ];
};
