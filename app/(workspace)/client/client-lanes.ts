import type { ClientDetail, ClientVisit, ConditionState } from '../../../lib/cohort/types/client-detail';
import type { Messages } from '../../../lib/core/messages/en';
import type {
  ConditionMark,
  ConditionRow,
  LaneData,
  LanePointState,
  TimeLanesData,
} from '../../../lib/figures/time-lanes/data';
import type { Cohort } from '../../../lib/cohort/types/cohort';
import type { GuardCode } from '../../../lib/measures/guard';
import { RULE_IDS } from '../../../lib/measures/comparability-rule';
import type { ValueWords } from '../../_state/use-value-words';
import { currentChange } from '../../../lib/workspace/current-change';

const marks: Readonly<Record<ConditionState, ConditionMark | undefined>> = {
  met: 'met',
  'by-procedure': 'met-by-procedure',
  'not-met': 'not-met',
  unknown: 'unknown',
  'not-recorded': undefined,
};

/** Visits that follow the client; the others served the error study or a cross-check of devices. */
export const followedVisits = (detail: ClientDetail): readonly ClientVisit[] =>
  detail.visits.filter(({ purpose }) => purpose === '' || purpose === 'routine' || purpose === 'repeat');

type Measure = ValueWords['measure'];
type GuardsOf = Cohort['guards'];

const codesOf = (visit: ClientVisit, { id }: Measure): readonly GuardCode[] => [
  ...visit.guards,
  ...(visit.outsideEquation[id] ?? []),
];

const stateOf = (visit: ClientVisit, measure: Measure, guardsOf: GuardsOf): LanePointState => {
  const { stop, hold } = guardsOf(measure.id);
  if (codesOf(visit, measure).some((code) => stop.includes(code) || hold.includes(code))) return 'held';
  return visit.comparableWithBaseline === 'no' ? 'not-comparable' : 'comparable';
};

/** An estimate at a stopped visit is not drawn; what was measured is, in grey. */
const isStoppedEstimate = (visit: ClientVisit, measure: Measure, guardsOf: GuardsOf): boolean =>
  measure.group.startsWith('composition') &&
  codesOf(visit, measure).some((code) => guardsOf(measure.id).stop.includes(code));

const breakBefore = (
  visit: ClientVisit,
  before: ClientVisit | undefined,
  words: Messages['client'],
): string | undefined => {
  if (before === undefined) return undefined;
  const changed = (['device', 'position', 'posture'] as const).filter(
    (label) => visit[label] !== null && before[label] !== null && visit[label] !== before[label],
  );
  return changed.length === 0 ? undefined : changed.map((label) => words.breaks[label]).join(', ');
};

const laneOf = (
  detail: ClientDetail,
  visits: readonly ClientVisit[],
  words: ValueWords,
  guardsOf: GuardsOf,
): LaneData => {
  const { measure } = words;
  const change = currentChange(detail, measure.id);
  const points = visits.flatMap((visit) => {
    const value = visit.values[measure.id];
    if (value === undefined || isStoppedEstimate(visit, measure, guardsOf)) return [];
    return [
      {
        key: `${measure.id}-${visit.visit}`,
        visitId: String(visit.visit),
        value,
        state: stateOf(visit, measure, guardsOf),
      },
    ];
  });
  return {
    id: measure.id,
    title: words.title,
    unit: measure.unit,
    digits: measure.decimals,
    points,
    ...(change === undefined ? {} : { baseline: change.valueFrom }),
    ...(change?.lsc === undefined || change.lsc === null ? {} : { leastSignificantChange: change.lsc }),
  };
};

const labelRow = (
  visits: readonly ClientVisit[],
  label: string,
  pick: (visit: ClientVisit) => string | null,
): ConditionRow[] =>
  visits.every((visit) => pick(visit) === null)
    ? []
    : [
        {
          label,
          marks: visits.map((visit) => {
            const text = pick(visit);
            return text === null ? undefined : { text };
          }),
        },
      ];

const conditionRows = (visits: readonly ClientVisit[], messages: Messages): readonly ConditionRow[] => {
  const rules = RULE_IDS.map((rule) => ({
    label: messages.reasons.condition[rule],
    marks: visits.map((visit) => {
      const state = visit.conditions[rule];
      return state === undefined ? undefined : marks[state];
    }),
  })).filter((row) => row.marks.some((mark) => mark !== undefined));
  return [...rules, ...labelRow(visits, messages.client.position, (visit) => visit.position)];
};

/** One client's values over time with their error bands, breaks and conditions. */
export const clientLanes = (
  detail: ClientDetail,
  lanes: readonly ValueWords[],
  messages: Messages,
  guardsOf: GuardsOf,
): TimeLanesData => {
  const visits = followedVisits(detail);
  return {
    visits: visits.map((visit, index) => {
      const changed = breakBefore(visit, visits[index - 1], messages.client);
      return { id: String(visit.visit), date: visit.date, ...(changed === undefined ? {} : { breakBefore: changed }) };
    }),
    lanes: lanes.map((words) => laneOf(detail, visits, words, guardsOf)).filter((lane) => lane.points.length > 0),
    conditions: conditionRows(visits, messages),
  };
};
