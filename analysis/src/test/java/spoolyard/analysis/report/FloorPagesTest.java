package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.OrderBook;
import spoolyard.core.plant.Plant;

final class FloorPagesTest {
    private static Map<String, String> pages(Plant plant) {
        return pages(plant, Map.of());
    }

    private static Map<String, String> pages(Plant plant, Map<String, List<String>> frozen) {
        return new FloorPages(SamplePlans.of(plant, frozen), SamplePlans.CLOCK, Viewing.D65_10).byFile();
    }

    /** What is not well-formed does not parse. */
    private static Document parsed(String page) throws IOException, SAXException, ParserConfigurationException {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    private static List<Element> all(Document page, String tag) {
        NodeList found = page.getElementsByTagName(tag);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    private static List<String> cells(Document page, int row) {
        NodeList cells = all(page, "tr").get(row).getElementsByTagName("td");
        return IntStream.range(0, cells.getLength())
                .mapToObj(i -> cells.item(i).getTextContent())
                .toList();
    }

    @Test
    void hasAPageForEachLineAndOneWithAllOfThem() throws Exception {
        Map<String, String> pages = pages(SamplePlant.of(3, 1));

        assertThat(pages).containsOnlyKeys("all-lines.html", "L1.html", "L2.html", "L3.html");
        assertThat(all(parsed(pages.get("all-lines.html")), "section")).hasSize(3);
        assertThat(all(parsed(pages.get("L2.html")), "h1").get(0).getTextContent())
                .isEqualTo("L2");
        assertThat(all(parsed(pages.get("L2.html")), "tr")).hasSize(1 + 3);
    }

    /** 400 spools at 18 kg/h and 0.8 % rejects take 22.4014 h, 22:24; the first third of 64 h ends at 03:20. */
    @Test
    void tellsAnOrderAsWorkedByHand() throws Exception {
        Document page = parsed(
                pages(SamplePlant.ofHours(1, 64), Map.of("L1", List.of("SO-1"))).get("L1.html"));

        assertThat(cells(page, 1))
                .containsExactly(
                        "1",
                        "Mon 1 Mar06:00",
                        "Tue 2 Mar04:24",
                        "SO-1frozenlate 1.1 h",
                        "NATNatural",
                        "PLA1.75 mm",
                        "4001 kg",
                        "none, line empty",
                        "",
                        "",
                        "",
                        "Tue 2 Mar03:20",
                        "");
        assertThat(cells(page, 2)).contains("colourfrom PLA Natural", "SO-2late 2.1 h");
    }

    /** The swatch of a colour is the one that the pictures show. */
    @Test
    void showsColoursTrueWithTheNameBeside() throws Exception {
        Document page = parsed(pages(SamplePlant.of(1, 1)).get("L1.html"));

        Element swatch = all(page, "span").stream()
                .filter(each -> each.getAttribute("class").equals("swatch"))
                .skip(1)
                .findFirst()
                .orElseThrow();
        int shown = Integer.parseInt(swatch.getAttribute("style").substring("background:#".length()), 16);
        Order red = SamplePlant.of(1, 1).book().orders().get(1);
        assertThat(0xFF000000 | shown)
                .isEqualTo(Swatch.of(red.product().colour(), Viewing.D65_10).getRGB());
        assertThat(cells(page, 2)).contains("REDRed");
    }

    @Test
    void anOrderDueOnADayIsDueAtItsEnd() throws Exception {
        Document page = parsed(pages(SamplePlant.ofHours(1, 54)).get("L1.html"));

        assertThat(cells(page, 1)).contains("Mon 1 Mar24:00");
    }

    @Test
    void needsNothingFromOutside() {
        for (String page : pages(SamplePlant.of(2, 1)).values()) {
            assertThat(page.replace("http://www.w3.org/1999/xhtml", ""))
                    .doesNotContain("http", "src=", "href=", "@import", "url(", "<script");
        }
    }

    @Test
    void textCannotBecomeATag() throws Exception {
        String nasty = "<script>alert(\"1\")</script> & 'x' \u0001";
        Plant plant = renamed(SamplePlant.of(1, 1), List.of("L1"), nasty);

        Map<String, String> pages = pages(plant);

        assertThat(pages.get("L1.html")).doesNotContain("<script");
        assertThat(all(parsed(pages.get("L1.html")), "b").stream().map(Element::getTextContent))
                .contains(nasty.replace('\u0001', '\uFFFD'));
    }

    @Test
    void namesOfLinesBecomeDistinctFileNames() throws Exception {
        List<String> names = List.of("../a", ".._a", "Line 1", "line_1", "all-lines");
        Plant plant = renamed(SamplePlant.of(5, 1), names, "SO-1");

        assertThat(pages(plant).keySet())
                .containsExactly(
                        "all-lines.html",
                        "___a.html",
                        "___a-2.html",
                        "Line_1.html",
                        "line_1-2.html",
                        "all-lines-2.html");
    }

    private static Plant renamed(Plant plant, List<String> names, String firstOrder) {
        List<Order> orders = new ArrayList<>();
        for (Order order : plant.book().orders()) {
            int line = Integer.parseInt(order.lines().get(0).substring(1)) - 1;
            orders.add(new Order(
                    orders.isEmpty() ? firstOrder : order.id(),
                    order.product(),
                    order.spools(),
                    order.releaseTick(),
                    order.dueTick(),
                    order.priority(),
                    order.weight(),
                    List.of(names.get(line))));
        }
        List<Line> lines = IntStream.range(0, names.size())
                .mapToObj(i -> named(plant.lines().get(i), names.get(i)))
                .toList();
        return new Plant(
                plant.name(),
                plant.horizonTicks(),
                lines,
                plant.crew(),
                plant.shifts(),
                plant.changeovers(),
                plant.finishing(),
                new OrderBook(orders, plant.book().rule(), Map.of()));
    }

    private static Line named(Line line, String name) {
        return new Line(
                name,
                line.strands(),
                line.nominalRateKgPerH(),
                line.polymers(),
                line.diametersMm(),
                line.holdUpKg(),
                line.accumulator(),
                line.winder(),
                line.winderReserve(),
                line.overflow(),
                line.overlength(),
                line.defectProbability(),
                line.defectProbabilityAfterThreadUp(),
                line.startStop(),
                line.stoppages(),
                line.plannedStops(),
                line.workingPeriods(),
                line.onLineNow(),
                line.runningAtStart(),
                line.place(),
                line.supply(),
                Optional.empty());
    }

    @Test
    void cautionsInTheWordsOfTheDocument() throws IOException {
        String cautions = Files.readString(Path.of("..", "docs", "cautions.md")).replace("*", "");

        assertThat(cautions).contains(HotWork.WHO_DECIDES);
        assertThat(HotWork.SENTENCES).allSatisfy(each -> assertThat(cautions).contains(each));
        assertThat(pages(SamplePlant.of(1, 1)).get("L1.html"))
                .contains("come first, always.", "isolate, and release melt pressure first.");
    }

    /** 20 min before 119:40 h after Monday 06:00, Saturday 05:40: begins at 05:40, ends at the end of the period, 06:00. */
    @Test
    void tellsThePurgeAtTheEndOfTheWeekInARowOfItsOwn() throws Exception {
        Document page = parsed(
                pages(SamplePlant.overAWeekend(Optional.of(SamplePlant.PURGE))).get("L1.html"));

        assertThat(cells(page, 2))
                .containsExactly(
                        "",
                        "Sat 6 Mar05:40",
                        "Sat 6 Mar06:00",
                        "End of week",
                        "NATNatural",
                        "PLA",
                        "",
                        "purge cleanfrom Black",
                        "0 kg+ 1.7 kgcompound",
                        "20 min",
                        "operator 20 min",
                        "",
                        "");
        assertThat(cells(page, 3)).contains("colourfrom PLA Natural");
    }
}
