const EPOCH = Date.UTC(1960, 0, 1);
const DAY_SECONDS = 86_400;

type Kind = 'date' | 'time' | 'datetime';

const KINDS: readonly (readonly [Kind, RegExp])[] = [
  [
    'datetime',
    /^(DATETIME|DATEAMPM|DTDATE|DTMONYY|DTWKDATX|DTYEAR|MDYAMPM|[EB]8601D[TNZX]|[EB]8601DTZ?|IS8601D[TNZ]|NLDATM\w*)$/,
  ],
  ['time', /^(TIME|TIMEAMPM|TOD|HHMM|HOUR|MMSS|[EB]8601T[MZX]|IS8601T[MZ]|NLTIMAP|NLTIME)$/],
  [
    'date',
    /^(DATE|DAY|DDMMYY[BCDNPS]?|MMDDYY[BCDNPS]?|YYMMDD[BCDNPS]?|MMYY[CDNPS]?|YYMM[CDNPS]?|MONYY|YYMON|YEAR|MONTH|QTR|QTRR|JULIAN|JULDAY|MONNAME|DOWNAME|WEEKDATE|WEEKDATX|WEEKDAY|WORDDATE|WORDDATX|YYQ\w*|[EB]8601DA|IS8601DA|NLDATE\w*)$/,
  ],
];

/** What a variable with this format holds, where it is a date or a time. */
export const kindOfFormat = (format: string): Kind | null =>
  KINDS.find(([, pattern]) => pattern.test(format.trim().toUpperCase()))?.[0] ?? null;

/**
 * A date (days since 1960-01-01), an instant (seconds since then) or a time of day (seconds) as ISO text; the number
 * itself where it is out of range.
 */
export const sasDate = (value: number, kind: Kind): string | number => {
  if (kind === 'time' && !(value >= 0 && value < DAY_SECONDS)) return value;
  const seconds = kind === 'date' ? Math.floor(value) * DAY_SECONDS : Math.floor(value);
  const date = new Date(EPOCH + seconds * 1000);
  const year = date.getUTCFullYear();
  if (!(year >= 1582 && year <= 9999)) return value;
  const text = date.toISOString();
  if (kind === 'date') return text.slice(0, 10);
  return kind === 'time' ? text.slice(11, 19) : text.slice(0, 19);
};
