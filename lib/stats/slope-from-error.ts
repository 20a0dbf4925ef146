/**
 * The slope of change on first value that measurement error alone makes, where nobody changed: a first value that lies high
 * by error comes back. −(variance of one visit by error) / (variance of the first values between people).
 *
 * @param errorVariance s_b² + s_w²/k, squared unit. @param firstVariance squared unit.
 * @returns undefined where the first values do not differ.
 * Source: least squares where the error is unrelated to all else (attenuation by error in the predictor); held against the
 * least-squares line of a general-purpose library.
 */
export const slopeFromError = (errorVariance: number, firstVariance: number): number | undefined =>
  firstVariance > 0 ? -errorVariance / firstVariance : undefined;
