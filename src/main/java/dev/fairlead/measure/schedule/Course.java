package dev.fairlead.measure.schedule;

import dev.fairlead.model.Choices.Pattern;
import java.util.ArrayList;
import java.util.List;

/**
 * How the front comes forward visit by visit: in each interval a side runs down a fixed share of the stand-off that its
 * fold then has, and no more than teeth can move in that time; at a visit the stand-off is set up again.
 *
 * @param left advance left to do on each side at each visit, mm, from the first; never below 0
 * @param openings visits at which a fold is opened
 * @param reached visit, counted from 0 at the first, at which a side has done its advance; -1 when it never does
 */
record Course(List<double[]> left, int openings, int[] reached) {
    private static final double DONE = 1e-6;
    private static final int MOST_VISITS = 150;

    /**
     * What a course runs by, for left and right.
     *
     * @param share share of the stand-off that is run down in one interval, 0 to 1
     * @param most farthest that a tooth moves in one interval, mm
     * @param standOff stand-off to which an activation sets the fold of each side, mm
     * @param openFirst false when the folds stand as given and are opened from the next visit on
     */
    record Drive(double[] share, double most, double[] standOff, Pattern pattern, boolean openFirst) {}

    /**
     * Runs until both sides have come as far as {@code toDo}; {@code standing} is the stand-off that acts at the start,
     * mm.
     */
    static Course run(double[] toDo, double[] standing, Drive drive) {
        double[] left = {Math.max(0, toDo[0]), Math.max(0, toDo[1])};
        double[] standOff = standing.clone();
        int[] reached = {left[0] < DONE ? 0 : -1, left[1] < DONE ? 0 : -1};
        List<double[]> path = new ArrayList<>();
        path.add(left.clone());
        int openings = 0;
        int turn = left[0] >= left[1] ? 0 : 1;
        for (int visit = 0; visit < MOST_VISITS && (reached[0] < 0 || reached[1] < 0); visit++) {
            if (visit > 0 || drive.openFirst()) {
                openings++;
                turn = open(left, standOff, turn, drive);
            }
            for (int i = 0; i < 2; i++) {
                double gain = Math.min(Math.min(drive.share()[i] * standOff[i], drive.most()), left[i]);
                standOff[i] -= gain;
                left[i] -= gain;
                if (left[i] < DONE && reached[i] < 0) {
                    left[i] = 0;
                    reached[i] = visit + 1;
                }
            }
            path.add(left.clone());
        }
        return new Course(path, openings, reached);
    }

    /** Opens both folds, or the one whose turn it is; a side that has come far enough is passed over. The next turn. */
    private static int open(double[] left, double[] standOff, int turn, Drive drive) {
        for (int i = 0; i < 2; i++) {
            boolean now = drive.pattern() == Pattern.BOTH_SIDES || i == turn || left[turn] < DONE;
            if (left[i] >= DONE && now) {
                standOff[i] = Math.max(standOff[i], drive.standOff()[i]);
            }
        }
        return 1 - turn;
    }

    boolean ends() {
        return reached[0] >= 0 && reached[1] >= 0;
    }

    /** Visit at which both sides have done their advance. */
    int end() {
        return Math.max(reached[0], reached[1]);
    }
}
