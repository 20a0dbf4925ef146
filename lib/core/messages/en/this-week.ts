import type { Formatters } from '../../formatters';

/** The first screen. */
export const thisWeek = (f: Formatters) => ({
  title: 'This week',
  headline: (p: {
    visits: number;
    usable: number;
    talk: number;
    again: number;
    invite: number | undefined;
    judged: boolean;
  }) => {
    const visits =
      p.visits === 0
        ? 'No visit since Monday.'
        : `${f.plural(p.visits, 'One visit since Monday', '# visits since Monday')}, ${p.usable === p.visits ? 'all of them' : `${f.number(p.usable)} of them`} usable.`;
    const invite = p.invite === undefined || p.invite === 0 ? '' : `, ${f.number(p.invite)} to invite`;
    if (!p.judged && p.talk === 0) {
      const repeat = p.again === 0 ? '' : ` ${f.plural(p.again, 'One person', '# people')} to measure again${invite}.`;
      return `${visits} No change can be judged yet.${repeat}`;
    }
    if (p.talk === 0 && p.again === 0) return `${visits} Nobody to talk to or to measure again${invite}.`;
    const talk = p.talk === 0 ? 'Nobody' : f.plural(p.talk, 'One person', '# people');
    const again = p.again === 0 ? 'nobody' : f.number(p.again);
    return `${visits} ${talk} to talk to, ${again} to measure again${invite}.`;
  },
  byErrorAlone: (p: { checked: number; about: string; from: string; to: string }) =>
    `With nobody changed, about ${p.about} of ${f.number(p.checked)} people checked would stand on the first list by measurement error alone (${p.from} to ${p.to}).`,
  noErrorStudy: (p: { checked: number }) =>
    `${f.plural(p.checked, '# person', '# people')} checked. Without an own between-day error study nobody can be listed; Repeatability says how to get one.`,
  nothingJudged: 'No change can be judged yet: there is no measurement error to judge it by.',
  period: (p: { monday: string; asOf: string }) => `${p.monday} to ${p.asOf}.`,
  state: 'State of the data',
  newestFile: 'Newest file',
  fileLine: (p: { name: string; rows: number; on: string }) =>
    `${p.name}, ${f.plural(p.rows, '# row', '# rows')}, read on ${p.on}`,
  moreFiles: (p: { n: number }) => f.plural(p.n, 'and one more file', 'and # more files'),
  noFile: 'none',
  waiting: 'Waiting for a decision',
  waitingRows: (p: { n: number }) => f.plural(p.n, '# row', '# rows'),
  nothingWaiting: 'nothing',
  errorStudy: 'Error study',
  errorLine: (p: { value: string; lsc: string; tier: string; df: number; clients: number }) =>
    `${p.value}: a change has to reach ${p.lsc} (${p.tier}; ${f.plural(p.df, '# degree of freedom', '# degrees of freedom')} from ${f.plural(p.clients, 'one client', '# clients')})`,
  noError: (p: { value: string }) => `${p.value}: none yet, so no threshold`,
  provisional: 'provisional: fewer than 30 degrees of freedom',
  conditions: 'Conditions beside the readings',
  conditionShares: (p: { recorded: string; byProcedure: string; unknown: string; notRecorded: string }) =>
    `recorded ${p.recorded}, by procedure ${p.byProcedure}, unknown ${p.unknown}, not recorded here ${p.notRecorded}`,
  conditionsNone: 'no condition is recorded in these files',
  pairs: 'Comparisons',
  pairsUsed: (p: { setting: string }) => `Used: ${p.setting}.`,
  pairsEach: (p: { strict: number; caution: number; all: number }) =>
    `From baseline to latest: ${f.number(p.strict)} comparable or by procedure, ${f.number(p.caution)} with those with a caution, ${f.number(p.all)} in all.`,
  byProcedureSaid: 'Conditions by procedure.',
  lastBackup: 'Last backup',
  backedUp: (p: { when: string }) => `backed up ${p.when}`,
  neverBackedUp: (p: { n: number }) =>
    `never backed up${p.n === 0 ? '' : f.plural(p.n, ', one change', ', # changes')}`,
  demoBackup: 'the demo needs none',
  changesSince: (p: { n: number }) =>
    p.n === 0 ? 'nothing changed since' : f.plural(p.n, 'one change since', '# changes since'),
  retention: 'Retention',
  overdueSince: (p: { date: string }) => `the date has passed: ${p.date}`,
  corrected: 'Corrected or set aside',
  question: {
    title: 'Does your clinic measure by a written procedure?',
    why: 'These files hold no column that says how a visit was measured. If a written procedure says so, visits can be compared “by procedure”, and every count says it. A row that says otherwise always wins.',
    declare: 'Declare the procedure',
    declaring: 'Calculating',
    otherwise:
      'If not, leave this open: changes are compared all the same, and nothing is known about the conditions behind them.',
  },
});
