package spoolyard.scenarios.read;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Origin;

/** Strict decoding of one file. */
final class Utf8 {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final String file;
    private final Faults faults;

    Utf8(String file, Faults faults) {
        this.file = file;
        this.faults = faults;
    }

    Optional<SourceText> decode(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            return wrongByte(bytes, in.position());
        }
        return clean(out.flip().toString());
    }

    private Optional<SourceText> clean(String decoded) {
        boolean marked = !decoded.isEmpty() && decoded.charAt(0) == BYTE_ORDER_MARK;
        String text = marked ? decoded.substring(1) : decoded;
        int control = firstControl(text);
        if (control >= 0) {
            int line = 1
                    + (int) text.substring(0, control)
                            .chars()
                            .filter(c -> c == '\n')
                            .count();
            return report(line, (int) text.charAt(control));
        }
        if (text.isBlank()) {
            Origin origin = Origin.ofFile(file);
            String mend = "fill it, or name another file";
            faults.add(new Fault(FaultKind.EMPTY_FILE, origin, "(empty)", "Must have content.", mend));
            return Optional.empty();
        }
        return Optional.of(new SourceText(file, text));
    }

    /** Characters that no text file has: control characters other than tab and line ends. */
    private static int firstControl(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' && c != '\t' && c != '\n' && c != '\r') {
                return i;
            }
        }
        return -1;
    }

    private Optional<SourceText> wrongByte(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        return report(line, bytes[position] & 0xFF);
    }

    private Optional<SourceText> report(int line, int code) {
        faults.add(new Fault(
                FaultKind.BAD_ENCODING,
                Origin.ofFile(file).onLine(line),
                String.format(Locale.ROOT, "byte 0x%02X", code),
                "Must be text in UTF-8.",
                "save the file as UTF-8 (in a spreadsheet: \"CSV UTF-8\")"));
        return Optional.empty();
    }
}
