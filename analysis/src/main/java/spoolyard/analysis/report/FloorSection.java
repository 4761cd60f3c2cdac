package spoolyard.analysis.report;

import java.awt.Color;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spoolyard.analysis.schedule.ChangeKind;
import spoolyard.analysis.schedule.ChangeoverEstimate;
import spoolyard.analysis.schedule.PlacedOrder;
import spoolyard.analysis.schedule.PlacedWeekEnd;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;

/**
 * What one line is to make, as a part of a page.
 *
 * @param plan the plan
 * @param number number of the line
 * @param clock the plant's clock
 * @param viewing light of the colours' L*a*b*
 */
record FloorSection(PlanFigures plan, int number, PlantClock clock, Viewing viewing) {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("EEE d MMM'<br/><b>'HH:mm'</b>'", Locale.ENGLISH);
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_AND_HOUR = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter END_OF_DAY =
            DateTimeFormatter.ofPattern("EEE d MMM'<br/><b>24:00</b>'", Locale.ENGLISH);
    private static final String HEADER =
            """
            <table>
            <thead><tr><th></th><th>Start</th><th>End</th><th>Order</th><th>Colour</th><th>Polymer</th>\
            <th class="n">Spools</th><th>Changeover</th><th class="n">Purge</th><th class="n">Time</th><th>Crew</th>\
            <th>Due</th><th>Done</th></tr></thead>
            <tbody>
            """;

    String html(List<PlacedOrder> orders) {
        Line line = plan.book().plant().lines().get(number);
        return "<section>\n<h1>" + Html.text(line.name()) + "</h1>\n<p class=\"faint\">"
                + Html.text(plan.book().plant().name()) + ". Plan from " + clock.minute(0) + ", "
                + clock.start().getZone() + ". "
                + line.onLineNow()
                        .map(now -> "On the line at that time: " + product(now) + ".")
                        .orElse("The line is empty at that time.")
                + " The order of the work is to be kept; times are expected, with stoppages at their mean.</p>\n"
                + cautions() + (orders.isEmpty() ? "<p>No orders.</p>\n" : table(orders)) + "</section>\n";
    }

    private static String product(Product product) {
        return Html.text(product.polymer().code() + " " + product.colour().name() + " " + product.diameterMm() + " mm");
    }

    private String table(List<PlacedOrder> orders) {
        Map<Integer, List<PlacedWeekEnd>> ends = PlacedWeekEnd.byPlace(plan, number);
        String rows = IntStream.range(0, orders.size())
                .mapToObj(place -> row(place + 1, orders.get(place)) + rows(ends.getOrDefault(place + 1, List.of())))
                .collect(Collectors.joining());
        return HEADER + rows(ends.getOrDefault(0, List.of())) + rows + "</tbody>\n</table>\n" + sum(orders);
    }

    private String rows(List<PlacedWeekEnd> ends) {
        return ends.stream().map(this::row).collect(Collectors.joining());
    }

    /** A purge at the end of a week has no order; what is under way is changed back to afterwards. */
    private String row(PlacedWeekEnd end) {
        long startTick = end.endTick() - Math.round(end.purge().lineS() * Ticks.PER_SECOND);
        String back = end.back().lineS() > 0
                ? "<br/><small>then the order goes on: first back from "
                        + Html.text(end.clean().colour().name()) + ", "
                        + shown(end.back().purgeKg()) + " kg, "
                        + minutes(end.back().lineS()) + "</small>"
                : "";
        return "<tr>" + cell("n", "") + cell("t", time(startTick)) + cell("t", time(end.endTick()))
                + cell("t", "<b>End of week</b>") + cell("", colour(end.clean().colour()))
                + cell("t", "<b>" + Html.text(end.clean().polymer().code()) + "</b>") + cell("n", "")
                + cell(
                        "",
                        "<b>purge clean</b><br/><small>from "
                                + Html.text(end.held().colour().name()) + "</small>" + back)
                + cell("n", purge(end.purge())) + cell("n", minutes(end.purge().lineS())) + cell("t", crew(end.crewS()))
                + cell("t", "") + cell("", "<span class=\"box\"></span>") + "</tr>\n";
    }

    private String row(int place, PlacedOrder order) {
        Product product = order.order().product();
        boolean isChange = order.change().lineS() > 0;
        return "<tr>" + cell("n", Integer.toString(place)) + cell("t", start(order, isChange))
                + cell("t", time(order.endTick()))
                + cell("t", "<b>" + Html.text(order.order().id()) + "</b>" + marks(order))
                + cell("", colour(product.colour()))
                + cell("t", "<b>" + Html.text(product.polymer().code()) + "</b><br/>" + product.diameterMm() + " mm")
                + cell("n", "<b>" + order.order().spools() + "</b><br/>" + shown(product.spoolKg()) + " kg")
                + cell("", change(order))
                + cell("n", isChange ? purge(order.change()) : "")
                + cell("n", isChange ? minutes(order.change().lineS()) : "")
                + cell("t", crew(order.crewS()))
                + cell("t", due(order.order().dueTick()))
                + cell("", "<span class=\"box\"></span>") + "</tr>\n";
    }

    /** Where there is a changeover, also when it is done. */
    private String start(PlacedOrder order, boolean isChange) {
        ZonedDateTime making = clock.at(order.makingTick());
        boolean isSameDay =
                making.toLocalDate().equals(clock.at(order.startTick()).toLocalDate());
        return isChange
                ? time(order.startTick()) + "<br/><small>makes from " + making.format(isSameDay ? HOUR : DAY_AND_HOUR)
                        + "</small>"
                : time(order.makingTick());
    }

    /** An order that is due on a day is due at its end. */
    private String due(long tick) {
        ZonedDateTime due = clock.at(tick);
        return due.toLocalTime().equals(LocalTime.MIDNIGHT) ? due.minusDays(1).format(END_OF_DAY) : due.format(TIME);
    }

    private static String cell(String style, String content) {
        return (style.isEmpty() ? "<td>" : "<td class=\"" + style + "\">") + content + "</td>";
    }

    private String time(long tick) {
        return clock.at(tick).format(TIME);
    }

    private static String marks(PlacedOrder order) {
        String frozen = order.isFrozen() ? "<br/><span class=\"mark\">frozen</span>" : "";
        return order.lateDays() > 0
                ? frozen + "<br/><span class=\"mark late\">late " + duration(order.lateDays() * 24) + "</span>"
                : frozen;
    }

    private static String duration(double hours) {
        if (hours < 1) {
            return Figures.shown(Math.max(1, hours * 60), 0) + " min";
        }
        return hours < 24 ? Figures.shown(hours, 1) + " h" : Figures.shown(hours / 24, 1) + " days";
    }

    private String colour(Colour colour) {
        Color shown = Swatch.of(colour, viewing);
        String hex = String.format(Locale.ROOT, "#%02x%02x%02x", shown.getRed(), shown.getGreen(), shown.getBlue());
        return "<span class=\"t\"><span class=\"swatch\" style=\"background:" + hex + "\"></span><b>"
                + Html.text(colour.code()) + "</b></span><br/>" + Html.text(colour.name());
    }

    private static String change(PlacedOrder order) {
        if (order.kinds().isEmpty()) {
            return order.before().isPresent() ? "none, same melt" : "none, line empty";
        }
        String kinds = order.kinds().stream().map(ChangeKind::label).collect(Collectors.joining(" + "));
        return "<b>" + kinds + "</b><br/><small>from "
                + order.before().map(from -> before(from, order)).orElse("") + "</small>";
    }

    private static String before(Product from, PlacedOrder order) {
        String diameter = order.kinds().contains(ChangeKind.DIAMETER) ? " " + from.diameterMm() + " mm" : "";
        return Html.text(from.polymer().code() + " " + from.colour().name()) + diameter;
    }

    private static String purge(ChangeoverEstimate change) {
        String compound = change.compoundKg() > 0
                ? "<br/><small>+ " + shown(change.compoundKg()) + " kg<br/>compound</small>"
                : "";
        return shown(change.purgeKg()) + " kg" + compound;
    }

    private static String crew(Map<CrewNeed, Double> crewS) {
        return crewS.entrySet().stream()
                .map(each -> Html.text(String.join(" or ", each.getKey().roles())) + " " + minutes(each.getValue()))
                .collect(Collectors.joining("<br/>"));
    }

    private static String minutes(double seconds) {
        return Figures.shown(seconds / 60, 0) + " min";
    }

    private static String shown(double kg) {
        return Figures.shown(kg, kg == Math.rint(kg) ? 0 : 1);
    }

    private String sum(List<PlacedOrder> orders) {
        ChangeoverEstimate sum = Stream.concat(
                        orders.stream().map(PlacedOrder::change),
                        PlacedWeekEnd.of(plan, number).stream().flatMap(end -> Stream.of(end.purge(), end.back())))
                .reduce(ChangeoverEstimate.NONE, ChangeoverEstimate::plus);
        int spools = orders.stream().mapToInt(order -> order.order().spools()).sum();
        return "<p>" + orders.size() + " orders, " + Figures.shown(spools, 0) + " spools; changeovers: "
                + Figures.shown(sum.purgeKg() + sum.compoundKg(), 0) + " kg to waste, "
                + Figures.shown(sum.lineS() / 3600, 1) + " h of the line, " + Figures.shown(sum.crewS() / 3600, 1)
                + " h of work. Expected values, refused colours included.</p>\n";
    }

    private static String cautions() {
        int half = (HotWork.SENTENCES.size() + 1) / 2;
        return "<div class=\"caution\"><b>Hot work. " + Html.text(HotWork.WHO_DECIDES) + "</b>\n"
                + list(HotWork.SENTENCES.subList(0, half))
                + list(HotWork.SENTENCES.subList(half, HotWork.SENTENCES.size())) + "</div>\n";
    }

    private static String list(List<String> sentences) {
        return sentences.stream()
                .map(each -> "<li>" + Html.text(sentence(each)) + "</li>\n")
                .collect(Collectors.joining("", "<ul>\n", "</ul>\n"));
    }

    /** Some are parts of sentences. */
    private static String sentence(String words) {
        String begun = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        return begun.endsWith(".") ? begun : begun + ".";
    }
}
