package spoolyard.core.random;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * Seeds of MRG32k3a from master seed, replication and name.
 *
 * <p>The bytes of (master seed, 8; replication, 4; name in UTF-8), big end first, are hashed with SHA-256 (FIPS 180-4,
 * which every Java platform must offer). The first six 32-bit words of the hash, big end first, are reduced to
 * {@code 1 .. m - 1} for the generator's two moduli. Two of the generator's 2<sup>191</sup> points drawn at random: that
 * two streams of a billion numbers overlap among a million has a chance below 10<sup>-36</sup>.
 */
final class StreamSeed {
    private static final long M1 = 4_294_967_087L; // L'Ecuyer 1999, table III
    private static final long M2 = 4_294_944_443L;
    private static final int WORDS = 6;

    private StreamSeed() {}

    static long[] of(long masterSeed, int replication, String name) {
        byte[] text = name.getBytes(StandardCharsets.UTF_8);
        ByteBuffer key = ByteBuffer.allocate(Long.BYTES + Integer.BYTES + text.length)
                .putLong(masterSeed)
                .putInt(replication)
                .put(text);
        ByteBuffer hash = ByteBuffer.wrap(sha256(key.array()));
        long[] seed = new long[WORDS];
        for (int i = 0; i < WORDS; i++) {
            long word = Integer.toUnsignedLong(hash.getInt());
            seed[i] = 1 + word % ((i < WORDS / 2 ? M1 : M2) - 1);
        }
        return seed;
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("This Java platform lacks SHA-256, which every one must offer.", e);
        }
    }
}
