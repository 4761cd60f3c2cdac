package spoolyard.core.random;

/** One stream of uniform random numbers. Belongs to one run and one thread. */
@FunctionalInterface
public interface Uniforms {
    /**
     * The next number of the stream.
     *
     * @return a number in the open interval (0, 1), never an end
     */
    double next();
}
