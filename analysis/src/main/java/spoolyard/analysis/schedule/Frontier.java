package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * What promptness costs in purge. Immutable.
 *
 * @param points from the least purge to the least lateness, at least one; each has more purge and less lateness than the one
 *     before
 * @param isExact whether it is proved that no plan beats any of them and none is missing
 */
public record Frontier(List<FrontierPoint> points, boolean isExact) {
    /** Copies the list. */
    public Frontier {
        points = List.copyOf(points);
    }

    /**
     * A few points that draw nearly the same line: both ends, then again and again the one that is farthest from the straight
     * line between its neighbours, both parts counted in shares of their range.
     *
     * @param most how many at most, {@code >= 2}
     * @return numbers of points, ascending
     */
    public List<Integer> bends(int most) {
        TreeSet<Integer> chosen = new TreeSet<>(List.of(0, points.size() - 1));
        while (chosen.size() < Math.min(most, points.size())) {
            int farthest = -1;
            double distance = -1;
            for (int point = 0; point < points.size(); point++) {
                if (!chosen.contains(point) && off(chosen.floor(point), point, chosen.ceiling(point)) > distance) {
                    farthest = point;
                    distance = off(chosen.floor(point), point, chosen.ceiling(point));
                }
            }
            chosen.add(farthest);
        }
        return new ArrayList<>(chosen);
    }

    /** Twice the area of the triangle over its longest side, in shares of the ranges. */
    private double off(int first, int point, int last) {
        double x = late(point) - late(first);
        double y = purge(point) - purge(first);
        double wide = late(last) - late(first);
        double high = purge(last) - purge(first);
        return Math.abs(x * high - y * wide) / Math.hypot(wide, high);
    }

    private double late(int point) {
        double range =
                points.get(0).lateSpoolDays() - points.get(points.size() - 1).lateSpoolDays();
        return points.get(point).lateSpoolDays() / range;
    }

    private double purge(int point) {
        double range = points.get(points.size() - 1).purgeKg() - points.get(0).purgeKg();
        return points.get(point).purgeKg() / range;
    }

    /**
     * The point from which on promptness becomes dear.
     *
     * @return the one farthest from the straight line between the ends; an end if there is no other
     */
    public int knee() {
        List<Integer> three = bends(3);
        return three.get(three.size() / 2);
    }
}
