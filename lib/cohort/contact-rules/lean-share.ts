import { ratioInterval } from '../../stats/ratio-interval';
import type { LeanShareReason } from '../types/contact-lists';
import type { Thresholds } from './thresholds';

/** From this loss on, in percent of the earlier weight, its lean share is looked at. */
export const LEAST_LOSS_PERCENT = 5;

interface ShareQuestion {
  readonly leanFrom: number;
  readonly leanChange: number;
  readonly weightChange: number;
  readonly weightFrom: number;
  readonly kFrom: number;
  readonly kTo: number;
  readonly limitPercent: number;
  readonly lean: Thresholds;
  readonly weight: Thresholds;
  /** The error of weight − lean value: it holds the covariance of the two. */
  readonly rest: Thresholds;
}

/** Whether a loss is large enough for its lean share, and more than the weight's own error. */
export const isShareAsked = ({ weightChange, weightFrom, kFrom, kTo, weight }: Omit<ShareQuestion, 'rest'>): boolean =>
  weightChange < 0 &&
  -weightChange * 100 >= LEAST_LOSS_PERCENT * weightFrom &&
  -weightChange >= weight.lsc(kFrom, kTo, weightFrom);

/**
 * The lean share of a weight loss, ΔFFM/ΔW, with Fieller's interval from the bivariate error of the two. In every reading
 * FM = weight − FFM, so that Cov(FFM, W) = (V_FFM + V_W − V_FM)/2 with the error study's own V of the three.
 *
 * @returns a reason where the interval's lower end lies above the limit; percent.
 */
export const leanShare = (question: ShareQuestion): LeanShareReason | undefined => {
  const { leanFrom, leanChange, weightChange, weightFrom, kFrom, kTo, limitPercent, lean, weight, rest } = question;
  if (!isShareAsked(question)) return undefined;
  const xx = lean.changeVariance(kFrom, kTo, leanFrom);
  const yy = weight.changeVariance(kFrom, kTo, weightFrom);
  const ff = rest.changeVariance(kFrom, kTo, weightFrom - leanFrom);
  const most = Math.sqrt(xx * yy);
  const xy = Math.min(most, Math.max(-most, (xx + yy - ff) / 2));
  const interval = ratioInterval([leanChange, weightChange], { xx, xy, yy }, lean.factor);
  if (interval === undefined || !(interval[0] * 100 > limitPercent)) return undefined;
  return {
    rule: 'lean-share',
    sharePercent: (100 * leanChange) / weightChange,
    intervalPercent: [100 * interval[0], 100 * interval[1]],
    limitPercent,
    weightChange,
    lossPercent: (-100 * weightChange) / weightFrom,
  };
};
