package dev.fairlead.measure.mechanics.element;

/**
 * Where the nodes of a frame are and how they are turned: positions, mm, and rotation matrices from the unloaded state.
 */
public final class FrameState {
    public final double[] position;
    public final double[] rotation;

    private FrameState(double[] position, double[] rotation) {
        this.position = position;
        this.rotation = rotation;
    }

    public static FrameState atRest(BeamFrame frame) {
        double[] r = new double[9 * frame.nodes()];
        for (int i = 0; i < frame.nodes(); i++) {
            r[9 * i] = 1;
            r[9 * i + 4] = 1;
            r[9 * i + 8] = 1;
        }
        return new FrameState(frame.rest.clone(), r);
    }

    public FrameState copy() {
        return new FrameState(position.clone(), rotation.clone());
    }

    /** Takes over another state of the same frame without allocating. */
    public void set(FrameState other) {
        System.arraycopy(other.position, 0, position, 0, position.length);
        System.arraycopy(other.rotation, 0, rotation, 0, rotation.length);
    }

    /** Moves every node by a step of six per node: a translation, then a spin about the fixed axes. */
    public void advance(double[] step) {
        for (int n = 0; n < position.length / 3; n++) {
            for (int k = 0; k < 3; k++) {
                position[3 * n + k] += step[6 * n + k];
            }
            Rotations.rotate(rotation, 9 * n, step[6 * n + 3], step[6 * n + 4], step[6 * n + 5]);
        }
    }
}
