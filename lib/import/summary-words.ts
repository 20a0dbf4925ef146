import type { RawCell } from '../formats/raw-table';

/**
 * What stands in the first cell of a line of totals, in lower case, in English, German, French, Spanish, Italian, Dutch
 * and Portuguese: *common practice, no source*.
 */
export const SUMMARY_WORDS: readonly string[] =
  'total|totals|sum|mean|average|avg|median|sd|std|std dev|stdev|std. dev.|standard deviation|min|max|minimum|maximum|count|σ|∑|Σ|ø|summe|gesamt|gesamtsumme|mittelwert|durchschnitt|standardabweichung|moyenne|somme|écart-type|médiane|promedio|media|suma|mediana|desviación estándar|somma|totale|deviazione standard|gemiddelde|totaal|som|média|soma|desvio padrão'
    .split('|')
    .flatMap((word) => [word, `${word}:`]);

const WORDS: ReadonlySet<string> = new Set(SUMMARY_WORDS);
const LONGEST = 24;

/** Whether a cell names a sum or a mean (`Total`, `Mean:`, `Σ`). */
export const isSummaryWord = (cell: RawCell): boolean =>
  typeof cell === 'string' && cell.length <= LONGEST && WORDS.has(cell.trim().toLowerCase());
