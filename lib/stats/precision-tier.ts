import { CONVENTIONAL_DF } from './threshold-factor';

/** What is known about a value's repeatability. */
export interface PrecisionEvidence {
  /** ν_M of the clinic's own between-day clusters. */
  readonly betweenDf: number;
  /** Clients that gave those clusters. */
  readonly betweenClients: number;
  /** ν_w of the clinic's own replicate readings. */
  readonly withinDf: number;
  /** A between-day value that the clinic entered, with its degrees of freedom. */
  readonly entered?: { readonly df: number };
  /** A published between-day value that was switched on, with its degrees of freedom. */
  readonly published?: { readonly df: number };
  /** It was answered that there is no threshold before an own between-day study. */
  readonly ownStudyOnly?: boolean;
}

/**
 * Where a threshold comes from. 1 and 2: own between-day error. 3: entered by the clinic. 4: published, not the clinic's
 * own. 5: own repositioning, a lower limit that gives no result. 6: none. `df` is that of PE for its factor and range.
 */
export type PrecisionTier =
  { readonly tier: 1 | 2 | 3 | 4 | 5; readonly provisional: boolean; readonly df: number } | { readonly tier: 6 };

const DF_FOR_PROVISIONAL = 10;
const CLIENTS_FOR_FIRM = 15;

/** The best source of a threshold that a clinic has. */
export const precisionTier = (evidence: PrecisionEvidence): PrecisionTier => {
  const { betweenDf, betweenClients, withinDf, entered, published } = evidence;
  if (betweenDf >= CONVENTIONAL_DF) return { tier: 1, provisional: betweenClients < CLIENTS_FOR_FIRM, df: betweenDf };
  if (betweenDf >= DF_FOR_PROVISIONAL) return { tier: 2, provisional: true, df: betweenDf };
  if (entered !== undefined) return { tier: 3, provisional: entered.df < CONVENTIONAL_DF, df: entered.df };
  if (published !== undefined) return { tier: 4, provisional: true, df: published.df };
  if (withinDf >= CONVENTIONAL_DF && evidence.ownStudyOnly !== true)
    return { tier: 5, provisional: false, df: withinDf };
  return { tier: 6 };
};
