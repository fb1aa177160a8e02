package dev.fairlead.model;

/** The patient's left or right. */
public enum Side implements Choice {
    LEFT,
    RIGHT;
}
