package dev.fairlead.web.edit;

import java.util.List;
import java.util.Map;

/**
 * What became of an edit.
 *
 * @param now the case as it stands
 * @param taken pointers whose new value is in the file
 * @param refused pointers whose value was not taken, and why
 * @param clashes values that another window changed meanwhile; nothing was written for them
 * @param others true when another window changed other facts since this one was loaded
 */
public record Outcome(
        Opened now, List<String> taken, Map<String, Refused> refused, List<Clash> clashes, boolean others) {}
