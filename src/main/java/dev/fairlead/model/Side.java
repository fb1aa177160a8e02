package dev.fairlead.model;

/** The patient's left or right. */
public enum Side implements Choice {
    LEFT,
    RIGHT;

    public Side other() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
