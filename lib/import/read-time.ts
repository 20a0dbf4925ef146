const CLOCK =
  /^(\d{1,2})(?::|h|\.(?=\d{2}\s*(?:h|uhr|[ap])))(\d{2})(?::(\d{2})(?:[.,]\d+)?)?\s*(h|uhr)?\s*([ap]\.?m\.?)?$/i;
const HOUR = /^(\d{1,2})\s*([ap]\.?m\.?)$/i;

const printed = (hour: number, minute: number, second: string | undefined): string | undefined => {
  if (hour > 23 || minute > 59 || Number(second ?? 0) > 59) return undefined;
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${two(hour)}:${two(minute)}${second === undefined || second === '00' ? '' : `:${second}`}`;
};

const ofDay = (hour: number, half: string | undefined): number => {
  if (half === undefined) return hour;
  if (hour < 1 || hour > 12) return 24;
  return (hour % 12) + (/^p/i.test(half) ? 12 : 0);
};

/** A time of day (`8:05`, `08:05:30`, `8h05`, `8:05 AM`, `8 pm`) as `HH:MM`, with seconds where it has some; undefined for other text. */
export const readTime = (text: string): string | undefined => {
  const clock = CLOCK.exec(text);
  if (clock !== null) return printed(ofDay(Number(clock[1]), clock[5]), Number(clock[2]), clock[3]);
  const hour = HOUR.exec(text);
  return hour === null ? undefined : printed(ofDay(Number(hour[1]), hour[2]), 0, undefined);
};

/** The time of a part of a day, as spreadsheets keep it (0 = midnight, 0.5 = noon), rounded to the minute. */
export const timeOfDayPart = (part: number): string | undefined => {
  const minutes = Math.round(part * 1440);
  return part < 0 || minutes > 1439 ? undefined : printed(Math.floor(minutes / 60), minutes % 60, undefined);
};
