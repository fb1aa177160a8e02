package dev.fairlead.web.edit;

/**
 * One value that two windows changed.
 *
 * @param there what stands in the file by now; empty when nothing does
 * @param here what was typed here; empty when it was taken out
 */
public record Clash(String pointer, String there, String here) {}
