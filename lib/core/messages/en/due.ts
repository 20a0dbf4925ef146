import type { Formatters } from '../../formatters';

/** Who is due, whom to invite, who was not seen for long. */
export const due = (f: Formatters) => ({
  invite: 'Invite',
  inviteFor: 'for the front desk',
  emptyInvite: 'Nobody is due this week or next, and nobody is overdue.',
  noPlan:
    'No program has planned visits or reviews, so nobody can be due. Settings, Programs says when each program sees its clients.',
  made: 'In an open program, with a planned visit or review this week or next or overdue. Twelve weeks after a missed one without a visit a client goes to Not seen since.',
  planned: (p: { review: boolean; week: number; day: string; overdueWeeks: number | null }) => {
    const what = `${p.review ? 'Review' : 'Visit'} of week ${f.number(p.week)}`;
    if (p.overdueWeeks === null) return `${what} is due on ${p.day}`;
    const since = p.overdueWeeks === 0 ? 'last week' : f.plural(p.overdueWeeks, '# week ago', '# weeks ago');
    return `${what} was due on ${p.day}, ${since}`;
  },
  windowOpen: (p: { day: string }) => `its window is open until ${p.day}`,
  windowClosed: (p: { day: string }) => `its window closed on ${p.day}`,
  missed: (p: { day: string }) => `An earlier planned time, ${p.day}, passed without a visit.`,
  lastSeen: (p: { day: string }) => `Last seen ${p.day}.`,
  neverSeen: 'Not seen yet.',
  nextOverdue: 'call or write, and ask whether they go on.',
  nextDue: 'confirm the appointment.',
  all: (p: { n: number }) => `all ${f.number(p.n)}`,
  fewer: 'fewer',
  shownOf: (p: { shown: number; all: number }) => `${f.number(p.shown)} of ${f.number(p.all)}`,
  notSeen: 'Not seen since',
  notSeenNote: 'A planned time passed twelve weeks ago or more and no visit came after it. They are on no other list.',
  notSeenEmpty: 'Nobody of an open program is missing for that long.',
  notSeenSince: (p: { day: string; missed: string }) => `not seen since ${p.day}; planned for ${p.missed}`,
  notSeenNever: (p: { missed: string }) => `never seen in this program; planned for ${p.missed}`,
  endIt: 'Whoever has left is ended with a reason on their own page, and leaves the list.',
  exportOffer: 'Save for the letter system',
  exportTitle: 'Names leave this app',
  exportWarning: (p: { n: number }) =>
    `${f.plural(p.n, 'The file holds one client', 'The file holds # clients')} with id, name, program and planned day. It is not sealed: keep it where letters are kept, and delete it when they are written. It is entered in the list of exports with your initials.`,
  exportAct: 'Save the file with names',
  exportCancel: 'Cancel',
  columns: {
    client: 'client_id',
    familyName: 'family_name',
    givenName: 'given_name',
    program: 'program',
    what: 'planned',
    week: 'planned_week',
    due: 'planned_day',
    windowTo: 'window_until',
    last: 'last_visit',
  },
  review: 'review',
  visit: 'visit',
  weekTitle: 'Due this week and next',
  weekNote: (p: { now: number; next: number }) => `${f.number(p.now)} this week, ${f.number(p.next)} next`,
  weekEmpty: 'Nobody is due this week or next.',
  toSheet: 'Visit sheet',
  dueRow: (p: { day: string; last: string }) => `${p.day} · ${p.last}`,
  lastWay: (p: { device: string | null; position: string | null }) =>
    p.device === null && p.position === null
      ? 'device and position not recorded'
      : [p.device, p.position === null ? null : `position ${p.position}`].filter((part) => part !== null).join(', '),
  firstVisit: 'no visit yet',
});
