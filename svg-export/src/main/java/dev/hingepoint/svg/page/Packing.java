package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Lays boxes on a sheet of a given width, each as high up as it goes and then as far left, the tallest first: none overlaps another. */
final class Packing {
    /** The lower edge of what is laid so far, from {@code left} on. */
    private record Step(double left, double depth) {}

    private final double width;
    private final Grid grid;
    private List<Step> skyline = new ArrayList<>(List.of(new Step(0, 0)));

    private Packing(double width, Grid grid) {
        this.width = width;
        this.grid = grid;
    }

    /** Where a box may begin that would begin at a place. */
    interface Grid {
        /** Anywhere. */
        Grid FREE = new Grid() {
            @Override
            public double left(double left, double boxWidth) {
                return left;
            }

            @Override
            public double top(double top, double boxHeight) {
                return top;
            }
        };

        double left(double left, double boxWidth);

        double top(double top, double boxHeight);
    }

    /** How each box moves, in the order in which they were given; the first is laid first. */
    static List<Vector> shifts(List<Box> boxes, double width, Grid grid) {
        Packing packing = new Packing(width, grid);
        Vector[] shifts = new Vector[boxes.size()];
        List<Integer> order = IntStream.range(0, boxes.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> i != 0)
                        .thenComparing(i -> -boxes.get(i).height()))
                .toList();
        for (int i : order) {
            shifts[i] = packing.lay(boxes.get(i));
        }
        return List.of(shifts);
    }

    private Vector lay(Box box) {
        double bestLeft = 0;
        double bestTop = Double.POSITIVE_INFINITY;
        for (Step step : skyline) {
            double left = grid.left(step.left(), box.width());
            if (left + box.width() <= width + 1e-9 || left == 0) {
                double top = grid.top(deepest(left, left + box.width()), box.height());
                if (top < bestTop) {
                    bestTop = top;
                    bestLeft = left;
                }
            }
        }
        raise(bestLeft, bestLeft + box.width(), bestTop + box.height());
        return new Vector(bestLeft - box.left(), bestTop - box.top());
    }

    private double deepest(double left, double right) {
        double deepest = 0;
        for (int i = 0; i < skyline.size(); i++) {
            double end = i + 1 < skyline.size() ? skyline.get(i + 1).left() : Double.POSITIVE_INFINITY;
            if (skyline.get(i).left() < right && end > left) {
                deepest = Math.max(deepest, skyline.get(i).depth());
            }
        }
        return deepest;
    }

    private void raise(double left, double right, double depth) {
        double after = 0;
        List<Step> changed = new ArrayList<>();
        for (Step step : skyline) {
            if (step.left() <= right) {
                after = step.depth();
            }
            if (step.left() < left || step.left() > right) {
                changed.add(step);
            }
        }
        changed.add(new Step(left, depth));
        changed.add(new Step(right, after));
        changed.sort(Comparator.comparingDouble(Step::left));
        skyline = changed;
    }
}
