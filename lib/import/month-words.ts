/** Beginnings of the months' names, without accents, in English, German, French, Spanish, Italian, Dutch and Portuguese. */
const MONTHS: readonly string[] = [
  'jan jän gen ene',
  'feb fev',
  'mar mrz mär maa mrt',
  'apr avr abr',
  'may mai mei mag',
  'jun juin giu',
  'jul juil lug',
  'aug aou ago',
  'sep set',
  'oct okt out ott',
  'nov',
  'dec dez dic',
];

const NUMBER_OF: ReadonlyMap<string, number> = new Map(
  MONTHS.flatMap((names, index) =>
    names.split(' ').map((name) => [name.normalize('NFKD').replace(/\p{M}/gu, ''), index + 1] as const),
  ),
);

/** The month (1–12) of a name or its abbreviation; undefined for any other word. */
export const monthOf = (word: string): number | undefined => {
  const plain = word.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return NUMBER_OF.get(plain.slice(0, 4)) ?? NUMBER_OF.get(plain.slice(0, 3));
};
