package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import spoolyard.analysis.sequence.Changeovers;
import spoolyard.analysis.sequence.InfeasibleBookException;
import spoolyard.analysis.sequence.Job;
import spoolyard.analysis.sequence.SequencedLine;
import spoolyard.analysis.sequence.SequencingProblem;
import spoolyard.analysis.sequence.WeekEnds;
import spoolyard.analysis.sequence.WorkingTime;
import spoolyard.core.plant.EndOfWeek;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;

/**
 * A plant's order book as a sequencing problem. Immutable.
 *
 * @param plant the plant
 * @param weights what its plans are judged by
 * @param products the products of the orders and of the lines now, and what is on a line purged at the end of a week, each melt
 *     once
 * @param problem the problem; its jobs and lines in the order of the plant's
 * @param experience what its times owe to simulated runs
 */
public record PlantBook(
        Plant plant, Weights weights, List<Product> products, SequencingProblem problem, Experience experience) {
    /** Copies the list. */
    public PlantBook {
        products = List.copyOf(products);
    }

    /**
     * States the problem.
     *
     * @param plant the plant; its book has at least one order
     * @param weights what its plans are judged by
     * @param frozen orders that a line makes first, ids by line name; lines without any may be left out
     * @return the book
     * @throws InfeasibleBookException if no plan is possible; says why
     */
    public static PlantBook of(Plant plant, Weights weights, Map<String, List<String>> frozen) {
        return of(plant, weights, frozen, Experience.NONE);
    }

    /**
     * The same book with times as runs taught them.
     *
     * @param experience what runs taught
     * @return another book, frozen orders as here
     */
    public PlantBook with(Experience experience) {
        SequencingProblem taught =
                new SequencingProblem(jobs(plant, weights, products, experience), problem.lines(), 0);
        return new PlantBook(plant, weights, products, taught, experience);
    }

    /**
     * The same book judged by other weights.
     *
     * @param weights what its plans are judged by
     * @return another book, frozen orders and experience as here
     */
    public PlantBook with(Weights weights) {
        return of(plant, weights, frozen(), experience);
    }

    private Map<String, List<String>> frozen() {
        return problem.lines().stream().collect(Collectors.toMap(SequencedLine::name, line -> line.frozen().stream()
                .map(job -> problem.jobs().get(job).id())
                .toList()));
    }

    private static PlantBook of(Plant plant, Weights weights, Map<String, List<String>> frozen, Experience experience) {
        List<Product> products = products(plant);
        List<Job> jobs = jobs(plant, weights, products, experience);
        ChangeoverArithmetic arithmetic = new ChangeoverArithmetic(plant, weights);
        List<List<Integer>> first = plant.lines().stream()
                .map(line -> frozen.getOrDefault(line.name(), List.of()).stream()
                        .map(id -> numberOf(plant, id))
                        .toList())
                .toList();
        List<SequencedLine> lines = IntStream.range(0, plant.lines().size())
                .parallel()
                .mapToObj(i -> line(arithmetic, plant, plant.lines().get(i), products, first.get(i)))
                .toList();
        return new PlantBook(plant, weights, products, new SequencingProblem(jobs, lines, 0), experience);
    }

    private static List<Job> jobs(Plant plant, Weights weights, List<Product> products, Experience experience) {
        List<LineTimes> times =
                plant.lines().stream().map(line -> new LineTimes(plant, line)).toList();
        JobMaker maker = new JobMaker(plant, weights, times, experience);
        List<Order> orders = plant.book().orders();
        return IntStream.range(0, orders.size())
                .mapToObj(order ->
                        maker.job(order, numberOf(products, orders.get(order).product())))
                .toList();
    }

    private static SequencedLine line(
            ChangeoverArithmetic arithmetic, Plant plant, Line line, List<Product> products, List<Integer> first) {
        LineTimes times = new LineTimes(plant, line);
        WorkingTime hours = times.hours();
        WeekEnds ends = weekEnds(arithmetic, plant, line, products, times.weekEndsS(hours), ChangeoverEstimate::money);
        return new SequencedLine(line.name(), hours, changeovers(arithmetic, line, products), first, ends);
    }

    private static List<Product> products(Plant plant) {
        List<Product> products = new ArrayList<>();
        List<Product> all = new ArrayList<>(
                plant.book().orders().stream().map(Order::product).toList());
        plant.lines().forEach(line -> line.onLineNow().ifPresent(all::add));
        for (Product product : all) {
            if (products.stream().noneMatch(product::sameMelt)) {
                products.add(product);
            }
        }
        List.copyOf(products).forEach(product -> plant.changeovers()
                .endOfWeek()
                .map(rule -> rule.cleaned(product))
                .filter(clean -> products.stream().noneMatch(clean::sameMelt))
                .ifPresent(products::add));
        return products;
    }

    /**
     * Purges of a line at the end of weeks with what each costs, in money or in something else.
     *
     * @param workedS when they come, worked seconds
     */
    static WeekEnds weekEnds(
            ChangeoverArithmetic arithmetic,
            Plant plant,
            Line line,
            List<Product> products,
            List<Double> workedS,
            ToDoubleFunction<ChangeoverEstimate> cost) {
        if (workedS.isEmpty()) {
            return WeekEnds.NONE;
        }
        EndOfWeek rule = plant.changeovers().endOfWeek().orElseThrow();
        List<Integer> clean = new ArrayList<>();
        List<Double> costs = new ArrayList<>();
        for (int state = 0; state <= products.size(); state++) {
            Optional<Product> held = held(line, products, state).filter(rule::isFor);
            clean.add(held.map(dirty -> numberOf(products, rule.cleaned(dirty))).orElse(-1));
            costs.add(held.map(dirty -> arithmetic.endOfWeek(line, dirty))
                    .map(cost::applyAsDouble)
                    .orElse(0.0));
        }
        return new WeekEnds(workedS, clean, costs);
    }

    private static Optional<Product> held(Line line, List<Product> products, int state) {
        return state < products.size() ? Optional.of(products.get(state)) : line.onLineNow();
    }

    /**
     * What a line holds in a state of its problem.
     *
     * @param line number of the line
     * @param state number of a product, or that of the line at the start
     * @return the product; empty if it is clean at the start
     */
    public Optional<Product> held(int line, int state) {
        return held(plant.lines().get(line), products, state);
    }

    private static int numberOf(List<Product> products, Product product) {
        return IntStream.range(0, products.size())
                .filter(i -> products.get(i).sameMelt(product))
                .findFirst()
                .orElseThrow();
    }

    private static int numberOf(Plant plant, String id) {
        List<Order> orders = plant.book().orders();
        return IntStream.range(0, orders.size())
                .filter(i -> orders.get(i).id().equals(id))
                .findFirst()
                .orElseThrow(
                        () -> new InfeasibleBookException("Order " + id + " is frozen but not in the order book."));
    }

    private static Changeovers changeovers(ChangeoverArithmetic arithmetic, Line line, List<Product> products) {
        return changeovers(arithmetic, line, products, ChangeoverEstimate::money);
    }

    /** All changes of a line with what each costs, in money or in something else, and the time it takes. */
    static Changeovers changeovers(
            ChangeoverArithmetic arithmetic,
            Line line,
            List<Product> products,
            ToDoubleFunction<ChangeoverEstimate> cost) {
        Changeovers.Table table = Changeovers.table(products.size());
        for (int to = 0; to < products.size(); to++) {
            Product after = products.get(to);
            if (line.canMake(after)) {
                for (int from = 0; from < products.size(); from++) {
                    ChangeoverEstimate each = arithmetic.estimate(line, products.get(from), after);
                    table.set(from, to, cost.applyAsDouble(each), each.lineS());
                }
                ChangeoverEstimate first = line.onLineNow()
                        .map(now -> arithmetic.estimate(line, now, after))
                        .orElse(ChangeoverEstimate.NONE);
                table.set(products.size(), to, cost.applyAsDouble(first), first.lineS());
            }
        }
        return table.done();
    }
}
