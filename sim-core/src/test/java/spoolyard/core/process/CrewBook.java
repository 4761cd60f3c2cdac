package spoolyard.core.process;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.Shift;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.CrewResult;

/**
 * Who was there, written down from what the event log tells of persons alone, and compared with the calendar and with what
 * the run says of its crew: heads, time there and pay. For plants in which no two shifts bring people at the same instant.
 */
final class CrewBook implements EventLog {
    private static final Pattern PERSON = Pattern.compile("(.+) \\d+");
    private static final double SLACK_S = 1e-6;

    /** A person from coming to going home. */
    private static final class Visit {
        private final String role;
        private final long fromTick;
        private final Map<String, Long> ticks = new LinkedHashMap<>();
        private String doing;
        private long sinceTick;

        private Visit(String role, long fromTick, String doing) {
            this.role = role;
            this.fromTick = fromTick;
            this.doing = doing;
            this.sinceTick = fromTick;
        }

        private void turn(long tick, String next) {
            ticks.merge(doing, tick - sinceTick, Long::sum);
            doing = next;
            sinceTick = tick;
        }

        private long ticks(Member.State state) {
            return ticks.getOrDefault(state.label(), 0L);
        }
    }

    /** What a role in the shifts of one name must come to, ticks. */
    private static final class Account {
        private long paid;
        private double ratedPaid;
        private long byCalendar;
        private long afterTheEnd;
        private final Map<Member.State, Long> spent = new LinkedHashMap<>();
    }

    private final Set<String> roles = new LinkedHashSet<>();
    private final Map<String, Visit> there = new LinkedHashMap<>();
    private final List<Visit> visits = new ArrayList<>();

    CrewBook(Plant plant) {
        plant.crew().roles().forEach(role -> roles.add(role.name()));
    }

    @Override
    public void tell(long tick, String where, String what, String detail) {
        Matcher person = PERSON.matcher(where);
        if (!person.matches() || !roles.contains(person.group(1))) {
            return;
        }
        Visit visit = there.get(where);
        if (visit != null) {
            visit.turn(tick, what);
        } else {
            visit = new Visit(person.group(1), tick, what);
            there.put(where, visit);
            visits.add(visit);
        }
        if (what.equals(Member.State.ABSENT.label())) {
            there.remove(where);
        }
    }

    /** What does not agree at the end of a run. */
    List<String> findings(Plant plant, RunResult result) {
        there.values().forEach(visit -> visit.turn(plant.horizonTicks(), visit.doing));
        List<String> broken = new ArrayList<>();
        Set<Visit> planned = new LinkedHashSet<>();
        for (int role = 0; role < plant.crew().roles().size(); role++) {
            Map<String, Account> byShift = new LinkedHashMap<>();
            for (Shift shift : plant.shifts()) {
                Account account = byShift.computeIfAbsent(shift.name(), name -> new Account());
                planned.addAll(book(plant, shift, role, account, broken));
            }
            Role its = plant.crew().roles().get(role);
            byShift.forEach((name, account) -> compare(account, said(result, its.name(), name), broken));
        }
        if (planned.size() != visits.size()) {
            broken.add(visits.size() + " came, " + planned.size() + " of them by the calendar");
        }
        return broken;
    }

    /** Puts a shift into the account of a role; gives the visits that belong to it. */
    private List<Visit> book(Plant plant, Shift shift, int role, Account account, List<String> broken) {
        long from = Math.max(0, shift.startTick());
        long to = Math.min(plant.horizonTicks(), shift.endTick());
        if (to <= from) {
            return List.of();
        }
        int heads = shift.heads().get(role);
        long onTop = shift.handOverOverlaps() && shift.startTick() >= 0 ? shift.handOverTicks() : 0;
        account.paid += heads * (to - from + onTop);
        account.ratedPaid += heads * (to - from + onTop) * shift.payFactor();
        long lost = shift.handOverOverlaps() ? 0 : shift.handOverTicks();
        long come = Math.max(from, shift.startTick() + lost);
        if (come >= to) {
            return List.of();
        }
        account.byCalendar += heads * (to - come);
        String name = plant.crew().roles().get(role).name();
        List<Visit> its = visits.stream()
                .filter(visit -> visit.role.equals(name) && visit.fromTick == come)
                .toList();
        if (its.size() != heads) {
            broken.add(its.size() + " of role " + name + " came at tick " + come + ", " + heads + " planned");
        }
        boolean mayStay = plant.crew().endOfShift() == Crew.EndOfShift.FINISH_TASK;
        for (Visit visit : its) {
            long after = visit.sinceTick - to;
            if (after < 0 || after > 0 && !mayStay || after > visit.ticks(Member.State.WORKING)) {
                broken.add("one of role " + name + " left " + after + " ticks after the end");
            }
            account.afterTheEnd += after;
            for (Member.State state : Member.State.values()) {
                account.spent.merge(state, visit.ticks(state), Long::sum);
            }
        }
        return its;
    }

    private static CrewResult said(RunResult result, String role, String shift) {
        return result.crew().stream()
                .filter(crew -> crew.role().equals(role) && crew.shift().equals(shift))
                .findFirst()
                .orElse(new CrewResult(role, shift, 0, 0, 0, 0, 0, 0, 0, 0));
    }

    private static void compare(Account account, CrewResult said, List<String> broken) {
        String who = said.role() + " in " + said.shift() + ": ";
        compare(who + "paid", said.paidS(), account.paid, broken);
        compare(who + "rated pay", said.ratedPaidS(), account.ratedPaid, broken);
        compare(
                who + "present and on break, less work after the end",
                said.presentS() + said.breakS() - Ticks.toSeconds(account.afterTheEnd),
                account.byCalendar,
                broken);
        long walking = account.spent.getOrDefault(Member.State.WALKING, 0L);
        long busy = walking + account.spent.getOrDefault(Member.State.WORKING, 0L);
        compare(who + "walking", said.walkingS(), walking, broken);
        compare(who + "busy", said.busyS(), busy, broken);
        compare(who + "present", said.presentS(), busy + account.spent.getOrDefault(Member.State.IDLE, 0L), broken);
        compare(who + "break", said.breakS(), account.spent.getOrDefault(Member.State.ON_BREAK, 0L), broken);
    }

    private static void compare(String what, double saidS, double foundTicks, List<String> broken) {
        double foundS = foundTicks / Ticks.PER_SECOND;
        if (!(Math.abs(saidS - foundS) <= SLACK_S)) {
            broken.add(what + " " + saidS + " s but " + foundS + " s");
        }
    }
}
