package spoolyard.analysis.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** A program that begins to write results, says so, and waits to be killed. */
final class FillsHalfAFolder {
    private FillsHalfAFolder() {}

    public static void main(String[] arguments) throws IOException, ResultsRefusedException {
        ResultsFolder.at(Path.of(arguments[0])).replaceWith(folder -> {
            Files.writeString(folder.resolve("lines.csv"), "line\nL1\n");
            System.out.println("half written");
            waitToBeKilled();
        });
    }

    private static void waitToBeKilled() {
        try {
            new CountDownLatch(1).await(1, TimeUnit.MINUTES);
        } catch (InterruptedException early) {
            throw new IllegalStateException(early);
        }
    }
}
