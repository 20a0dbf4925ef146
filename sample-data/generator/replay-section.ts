import { type Clinic } from './build-clinic';

/** Talk to on one Friday: the rules that listed each client. */
interface ReplayDay {
  readonly asOf: string;
  readonly talkTo: Readonly<Record<string, readonly string[]>>;
  readonly measureAgain: number;
}

/** The committed replay of the contact lists, and the bytes that it was made from. */
export interface Replay {
  readonly visits: string;
  readonly settings: string;
  readonly days: readonly ReplayDay[];
}

/** Planted clients with a loss that Talk to has to find, beside the hidden losers. */
const PLANTED_LOSSES = ['OM-0023', 'OM-0058'];

/** What the replay comes to. New: a row that did not stand there the week before. */
export interface ReplayFigures {
  readonly weeks: number;
  readonly listed: number;
  readonly added: number;
  readonly addedPlanted: number;
  readonly losersFound: number;
  readonly losers: number;
  readonly measureAgain: number;
  readonly mostAdded: number;
  readonly byRule: Readonly<Record<string, { readonly added: number; readonly planted: number }>>;
}

/** Counts over the weeks after the first, which only says what stood there before. */
export const replayFigures = ({ days }: Replay, { people }: Pick<Clinic, 'people'>): ReplayFigures => {
  const losers = people.filter(({ loser }) => loser).map(({ id }) => id);
  const planted = new Set([...losers, ...PLANTED_LOSSES]);
  const weeks = days.slice(1);
  const added = weeks.map(({ talkTo }, index) =>
    Object.entries(talkTo).filter(([client]) => days[index]?.talkTo[client] === undefined),
  );
  const rows = added.flat();
  const rules = [...new Set(rows.flatMap(([, own]) => own))].sort();
  return {
    weeks: weeks.length,
    listed: weeks.reduce((total, { talkTo }) => total + Object.keys(talkTo).length, 0),
    added: rows.length,
    addedPlanted: rows.filter(([client]) => planted.has(client)).length,
    losersFound: losers.filter((id) => days.some(({ talkTo }) => talkTo[id] !== undefined)).length,
    losers: losers.length,
    measureAgain: weeks.reduce((total, day) => total + day.measureAgain, 0),
    mostAdded: Math.max(...added.map((week) => week.length)),
    byRule: Object.fromEntries(
      rules.map((rule) => {
        const own = rows.filter(([, names]) => names.includes(rule));
        return [rule, { added: own.length, planted: own.filter(([client]) => planted.has(client)).length }];
      }),
    ),
  };
};

/** The section of the readme: how the contact lists would have stood on each Friday. */
export const replaySection = (replay: Replay, clinic: Clinic): string => {
  const figures = replayFigures(replay, clinic);
  const perWeek = (n: number): string => (n / figures.weeks).toFixed(2);
  return `The lists as of each Friday of the last ${figures.weeks} weeks, each as if the later visits had not come yet
(\`npm run replay\`, kept in \`replay.json\`). *New*: not there the Friday before.

| figure | value | wanted |
| --- | --- | --- |
| new rows on Talk to, a week | ${perWeek(figures.added)} (${figures.added} in all, at most ${figures.mostAdded} in one week) | at most 3 |
| of the new rows: hidden losers, OM-0023, OM-0058 | ${((100 * figures.addedPlanted) / figures.added).toFixed(0)} % (${figures.addedPlanted} of ${figures.added}) | at least a third |
| hidden losers that stood there at least once | ${figures.losersFound} of ${figures.losers} | at least 11 |
| rows on Talk to, a Friday | ${perWeek(figures.listed)} | |
| rows on Measure again, a Friday | ${perWeek(figures.measureAgain)} | |

New rows by rule (a row may have several):

| rule | new rows | of them planted |
| --- | --- | --- |
${Object.entries(figures.byRule)
  .map(([rule, { added, planted }]) => `| \`${rule}\` | ${added} | ${planted} |`)
  .join('\n')}`;
};
