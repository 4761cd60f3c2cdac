package spoolyard.core.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class StreamSeedTest {
    /**
     * Source: Python 3 hashlib.sha256 over struct.pack('>qi', masterSeed, replication) + name.encode('utf-8'), reduced as
     * documented; the hash itself also from sha256sum.
     */
    @Test
    void isTheReducedHashOfSeedReplicationAndName() {
        assertThat(StreamSeed.of(2026, 7, "line L3 / breakdown"))
                .containsExactly(10714029L, 2831009640L, 3912092008L, 2984926019L, 1678508824L, 3885947919L);
        assertThat(StreamSeed.of(-1, 0, "Gr\u00f6\u00dfe"))
                .containsExactly(790424823L, 1465079893L, 2786074878L, 274512018L, 2011393455L, 986094202L);
    }

    @Test
    void isAllowedByTheGenerator() {
        for (int i = 0; i < 100_000; i++) {
            long[] seed = StreamSeed.of(i, 0, "range");
            assertThat(Arrays.stream(seed, 0, 3)).allMatch(word -> word >= 1 && word < 4294967087L);
            assertThat(Arrays.stream(seed, 3, 6)).allMatch(word -> word >= 1 && word < 4294944443L);
        }
    }

    @Test
    void differsForManyNamesReplicationsAndSeeds() {
        Set<String> seen = new HashSet<>();
        int count = 0;
        for (int master = -10; master < 10; master++) {
            for (int replication = 0; replication < 100; replication++) {
                for (int line = 0; line < 100; line++, count++) {
                    seen.add(Arrays.toString(StreamSeed.of(master, replication, "line L" + line + " / swap")));
                }
            }
        }

        assertThat(seen).hasSize(count).hasSize(200_000);
    }
}
