package spoolyard.analysis.report;

import java.util.List;

/** Writes a page that needs nothing but itself: well-formed XML that every browser reads as HTML. */
final class Html {
    private static final String STYLE =
            """
            @page { size: A4 landscape; margin: 10mm 12mm; }
            * { box-sizing: border-box; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
            body { font: 9.5pt/1.3 Arial, "Liberation Sans", Helvetica, sans-serif; color: #262b33; margin: 8mm; }
            section { max-width: 273mm; margin: 0 auto; }
            section + section { page-break-before: always; margin-top: 12mm; }
            h1 { font-size: 20pt; margin: 0 0 1mm; }
            p { margin: 0 0 2mm; }
            .faint { color: #5e6672; }
            table { border-collapse: collapse; width: 100%; margin: 3mm 0; }
            thead { display: table-header-group; }
            tr { page-break-inside: avoid; }
            th { text-align: left; font-size: 8.5pt; border-bottom: 1.5pt solid #262b33; padding: 1mm 1.2mm; }
            td { border-bottom: 0.5pt solid #9997ad; padding: 1mm 1.2mm; vertical-align: top; }
            td small { color: #5e6672; font-size: 8pt; }
            .n { text-align: right; white-space: nowrap; }
            .t { white-space: nowrap; }
            .swatch, .box { display: inline-block; width: 5mm; height: 5mm; border: 0.75pt solid #262b33; }
            .swatch { margin-right: 1.5mm; vertical-align: -1.2mm; }
            .mark { font-weight: bold; border: 1pt solid #262b33; padding: 0 1mm; white-space: nowrap; }
            .late { color: #bb1320; border-color: #bb1320; }
            .caution { border: 1.5pt solid #bb1320; padding: 1.5mm 3mm; page-break-inside: avoid; font-size: 8.5pt; }
            .caution ul { display: inline-block; width: 48%; vertical-align: top; margin: 1mm 0 0; padding-left: 5mm; }
            @media print { body { margin: 0; } section { max-width: none; } section + section { margin-top: 0; } }
            """;

    private Html() {}

    /** A whole page of sections, each on paper of its own. */
    static String page(String title, List<String> sections) {
        return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n"
                + "<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" content=\"width=device-width\"/>\n<title>"
                + text(title) + "</title>\n<style>\n" + STYLE + "</style>\n</head>\n<body>\n"
                + String.join("", sections) + "</body>\n</html>\n";
    }

    /** Text that cannot become a tag; what XML cannot hold becomes a replacement character. */
    static String text(String raw) {
        StringBuilder safe = new StringBuilder();
        raw.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(isInXml(c) ? c : 0xFFFD);
            }
        });
        return safe.toString();
    }

    /** Source: XML 1.0, production 2, Char. */
    private static boolean isInXml(int c) {
        boolean isBlank = c == '\t' || c == '\n' || c == '\r';
        return isBlank || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
    }
}
