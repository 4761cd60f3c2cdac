package spoolyard.analysis.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import spoolyard.analysis.schedule.GivenPlan;
import spoolyard.analysis.schedule.PlanEdit;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.analysis.schedule.RefusedChangeException;
import spoolyard.analysis.sequence.Plan;
import spoolyard.core.plant.Line;

/** A plan that is there already, and what is to be changed in it. */
final class WhatIfOptions {
    @Option(
            names = "--from",
            paramLabel = "PLAN.csv",
            description = "Take this plan in place of a search, and change what --move and --rush say.")
    private Path from;

    @Option(
            names = "--move",
            paramLabel = "\"ORDER LINE WHERE\"",
            description = {
                "Put an order elsewhere and tell what that costs; WHERE is first, last, before ORDER or after ORDER.",
                "Without --from the scenario's own given sequence is changed. May be given again."
            })
    private List<String> moves = new ArrayList<>();

    @Option(
            names = "--rush",
            paramLabel = "ORDER",
            description =
                    "Put an order where it is on time at the least cost, all others as they stand; after all moves.")
    private List<String> rushes = new ArrayList<>();

    /** Whether a plan is to be taken and not searched for. */
    boolean isAsked() {
        return from != null || !moves.isEmpty() || !rushes.isEmpty();
    }

    /** What the scenario is to be read with. */
    List<String> settings() throws InputException {
        if (from == null) {
            return List.of();
        }
        if (!Files.isRegularFile(from)) {
            throw new InputException(
                    "--from = " + from, "Must be a file that can be read; it is not there.", "correct the name");
        }
        String quoted = from.toString().replace("\\", "\\\\").replace("\"", "\\\"");
        return List.of("/orders/rule=given sequence", "/orders/sequence=\"" + quoted + "\"");
    }

    /** The plan before the change. */
    Plan before(PlantBook book) throws InputException {
        return GivenPlan.of(book)
                .orElseThrow(() -> new InputException(
                        moves.isEmpty() ? "--rush" : "--move",
                        "Must have a plan to change: the scenario has no given sequence of all orders.",
                        "give one with --from plan.csv"));
    }

    /** The plan after it. */
    Plan after(PlantBook book, Plan before) throws InputException {
        List<String> names = book.plant().lines().stream().map(Line::name).toList();
        String option = "--freeze";
        try {
            PlanEdit edit = new PlanEdit(book, before);
            for (String typed : moves) {
                option = "--move = " + typed;
                MoveArgument move = MoveArgument.of(typed, names);
                edit.move(move.order(), move.line(), move.spot());
            }
            for (String order : rushes) {
                option = "--rush = " + order;
                edit.rush(order.strip());
            }
            return edit.plan();
        } catch (RefusedChangeException refused) {
            throw new InputException(option, refused.getMessage(), refused.mend());
        }
    }

    /** The orders that are to be moved. */
    List<String> moved(PlantBook book) throws InputException {
        List<String> names = book.plant().lines().stream().map(Line::name).toList();
        List<String> moved = new ArrayList<>();
        for (String typed : moves) {
            moved.add(MoveArgument.of(typed, names).order());
        }
        rushes.forEach(order -> moved.add(order.strip()));
        return moved;
    }
}
