/**
 * Degrees of freedom up to which the incomplete gamma function of @stdlib 0.3.1 is trusted. From about 1,700 its
 * value is off by up to 2 % above the mean, against SciPy 1.17 and arbitrary-precision arithmetic.
 */
export const LARGEST_GAMMA_DF = 1000;
