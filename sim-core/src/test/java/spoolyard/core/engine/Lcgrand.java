package spoolyard.core.engine;

/**
 * The multiplicative generator of a simulation textbook, its stream 1: Z = 630360016 Z mod (2^31 - 1), u = (Z / 128 | 1)
 * / 2^24 in single precision.
 *
 * <p>Source: Marse and Roberts 1983 in Law and Kelton, Simulation Modeling and Analysis, appendix 7A; seed of stream 1
 * and code read in a public copy of the book's programs.
 */
final class Lcgrand {
    private static final long MODULUS = 2_147_483_647L;
    private long z = 1_973_272_912L;

    double next() {
        z = 630_360_016L * z % MODULUS;
        return (z >> 7 | 1) / 16_777_216f;
    }

    long state() {
        return z;
    }

    double exponential(double mean) {
        return -mean * Math.log(next());
    }
}
