package spoolyard.analysis.sequence;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Kinds of asymmetric tours, drawn at random, after the generators of Cirasella, Johnson, McGeoch and Zhang, Algorithm
 * Engineering and Experimentation 2001: as remembered, not read again. What is remembered is what a tour is like, not the numbers;
 * an instance drawn here is none of theirs. Distances are whole numbers.
 */
enum TourClass {
    /** Every distance on its own. */
    RANDOM {
        @Override
        double[][] draw(int size, SplittableRandom random) {
            double[][] distance = new double[size][size];
            for (double[] row : distance) {
                Arrays.setAll(row, i -> random.nextInt(SQUARE));
            }
            return distance;
        }
    },
    /** The same, made shorter by ways round. */
    SHORTEST_PATHS {
        @Override
        double[][] draw(int size, SplittableRandom random) {
            double[][] distance = RANDOM.draw(size, random);
            close(distance);
            return distance;
        }
    },
    /** A stacker crane: from the end of one lift to the start of the next, lifts being short. */
    STACKER_CRANE {
        @Override
        double[][] draw(int size, SplittableRandom random) {
            double[][] start = points(size, random);
            double[][] end = new double[size][];
            for (int i = 0; i < size; i++) {
                end[i] = new double[] {shifted(start[i][0], random), shifted(start[i][1], random)};
            }
            double[][] distance = new double[size][size];
            for (int from = 0; from < size; from++) {
                for (int to = 0; to < size; to++) {
                    distance[from][to] =
                            Math.rint(Math.hypot(start[to][0] - end[from][0], start[to][1] - end[from][1]));
                }
            }
            return distance;
        }

        private double shifted(double at, SplittableRandom random) {
            return at + random.nextInt(2 * SQUARE / 10 + 1) - SQUARE / 10.0;
        }
    },
    /** A disk: the head goes in or out while the disk turns, and waits until the start of a file comes by. */
    DISK {
        @Override
        double[][] draw(int size, SplittableRandom random) {
            double[][] start = points(size, random);
            double[][] distance = new double[size][size];
            for (int from = 0; from < size; from++) {
                double endX = start[from][0] + random.nextInt(SQUARE / 10);
                for (int to = 0; to < size; to++) {
                    double seek = Math.abs(start[to][1] - start[from][1]) / 10;
                    double turn = ((start[to][0] - endX) % SQUARE + SQUARE) % SQUARE;
                    distance[from][to] = Math.rint(turn >= seek ? turn : turn + SQUARE);
                }
            }
            return distance;
        }
    },
    /** Coins of pay phones: streets in a grid, each phone on one side of a street, one way round the town. */
    COIN_COLLECTION {
        @Override
        double[][] draw(int size, SplittableRandom random) {
            int side = 1 + (int) Math.round(Math.sqrt(size));
            double[][] corner = corners(side);
            double[][] at = new double[size][];
            for (int i = 0; i < size; i++) {
                int from = random.nextInt(side * side);
                int to = random.nextInt(side * side);
                while (corner[from][to] != BLOCK) {
                    from = random.nextInt(side * side);
                    to = random.nextInt(side * side);
                }
                at[i] = new double[] {from, to, random.nextInt((int) BLOCK)};
            }
            close(corner);
            double[][] distance = new double[size][size];
            for (int i = 0; i < size; i++) {
                for (int j = 0; j < size; j++) {
                    boolean isAhead = at[i][0] == at[j][0] && at[i][1] == at[j][1] && at[j][2] >= at[i][2];
                    distance[i][j] = isAhead
                            ? at[j][2] - at[i][2]
                            : BLOCK - at[i][2] + corner[(int) at[i][1]][(int) at[j][0]] + at[j][2];
                }
            }
            return distance;
        }

        private double[][] corners(int side) {
            double[][] corner = new double[side * side][side * side];
            for (double[] row : corner) {
                Arrays.fill(row, 1e9);
            }
            for (int x = 0; x < side; x++) {
                for (int y = 0; y < side; y++) {
                    street(corner, side, x, y, x + 1, y, y != side - 1);
                    street(corner, side, x, y, x - 1, y, y != 0);
                    street(corner, side, x, y, x, y + 1, x != 0);
                    street(corner, side, x, y, x, y - 1, x != side - 1);
                }
            }
            return corner;
        }

        private void street(double[][] corner, int side, int x, int y, int toX, int toY, boolean isOpen) {
            boolean isInTown = Math.min(toX, toY) >= 0 && Math.max(toX, toY) < side;
            if (isOpen && isInTown) {
                corner[x * side + y][toX * side + toY] = BLOCK;
            }
        }
    },
    /** A drill on a tilted table: down costs nothing, up twice as much as across. */
    TILTED_DRILL {
        @Override
        double[][] draw(int size, SplittableRandom random) {
            double[][] hole = points(size, random);
            double[][] distance = new double[size][size];
            for (int from = 0; from < size; from++) {
                for (int to = 0; to < size; to++) {
                    double up = hole[to][1] - hole[from][1];
                    distance[from][to] = Math.abs(hole[to][0] - hole[from][0]) + 2 * Math.max(0, up);
                }
            }
            return distance;
        }
    },
    /** A flow shop of fifty machines where no job may wait: from start to start. The first city is the shop when empty. */
    NO_WAIT_SHOP {
        private static final int MACHINES = 50;

        @Override
        double[][] draw(int size, SplittableRandom random) {
            double[][] endS = new double[size][MACHINES + 1];
            for (int job = 1; job < size; job++) {
                for (int machine = 0; machine < MACHINES; machine++) {
                    endS[job][machine + 1] = endS[job][machine] + 1 + random.nextInt(1000);
                }
            }
            double[][] distance = new double[size][size];
            for (int from = 0; from < size; from++) {
                for (int to = 1; to < size; to++) {
                    double apart = 0;
                    for (int machine = 0; machine < MACHINES; machine++) {
                        apart = Math.max(apart, endS[from][machine + 1] - endS[to][machine]);
                    }
                    distance[from][to] = from == 0 ? 0 : apart;
                }
                distance[from][0] = endS[from][MACHINES];
            }
            return distance;
        }
    };

    static final int SQUARE = 1_000_000;
    static final double BLOCK = 1000;

    abstract double[][] draw(int size, SplittableRandom random);

    /** Distances from the row to the column. */
    double[][] distances(int size) {
        return draw(size, new SplittableRandom(size));
    }

    private static double[][] points(int size, SplittableRandom random) {
        double[][] points = new double[size][2];
        for (double[] point : points) {
            Arrays.setAll(point, i -> random.nextInt(SQUARE));
        }
        return points;
    }

    /** Floyd, Communications of the ACM 5 (1962). */
    private static void close(double[][] distance) {
        for (int by = 0; by < distance.length; by++) {
            for (double[] row : distance) {
                for (int to = 0; to < distance.length; to++) {
                    row[to] = Math.min(row[to], row[by] + distance[by][to]);
                }
            }
        }
    }
}
