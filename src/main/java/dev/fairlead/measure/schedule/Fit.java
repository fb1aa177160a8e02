package dev.fairlead.measure.schedule;

import dev.fairlead.model.Choice;

/** Whether the plan is done before leeway is lost. */
public enum Fit implements Choice {
    /** The late end of the plan comes before the early end of shedding. */
    FITS,
    /** The plan is expected to end before the second primary molar is expected to go, but the ranges overlap. */
    TIGHT,
    /** The plan is expected to end after the second primary molar is expected to go. */
    LATE,
    /** A second primary molar is gone already: its leeway is being lost or held by something else. */
    SHED,
    /** Something is missing. */
    UNKNOWN
}
